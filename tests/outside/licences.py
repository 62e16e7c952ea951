"""Whether every library comes from where it may, under a licence that was looked at.

    python tests/outside/licences.py

Reads what deny.toml allows and what cargo knows of the libraries in the lock files of the program
and of its fuzzer. `cargo deny` reads the same file and looks at known weaknesses too, but would have
to be compiled first: it is a command of docs/security.md.
"""

import json
import pathlib
import re
import subprocess
import sys
import tomllib

ROOT = pathlib.Path(__file__).resolve().parents[2]
MANIFESTS = [ROOT / "Cargo.toml", ROOT / "fuzz/Cargo.toml"]
RULES = tomllib.loads((ROOT / "deny.toml").read_text())
CRATES_IO = "registry+https://github.com/rust-lang/crates.io-index"


def packages(manifest):
    """Every library that the lock file names, those for other systems too."""
    asked = ["cargo", "metadata", "--format-version", "1", "--locked", "--all-features"]
    answer = subprocess.run([*asked, "--manifest-path", manifest], stdout=subprocess.PIPE, check=True)
    return json.loads(answer.stdout)["packages"]


def is_allowed(expression, allowed):
    """Whether an SPDX expression (SPDX 2.3, annex D) can be fulfilled with what is allowed."""
    # Older manifests write a stroke for OR.
    pieces = re.findall(r"[()]|[^\s()]+", expression.replace("/", " OR "))

    def either():
        one = both()
        while pieces and pieces[0] == "OR":
            pieces.pop(0)
            other = both()
            one = one or other
        return one

    def both():
        one = single()
        while pieces and pieces[0] == "AND":
            pieces.pop(0)
            other = single()
            one = one and other
        return one

    def single():
        name = pieces.pop(0)
        if name == "(":
            inside = either()
            assert pieces.pop(0) == ")", expression
            return inside
        if pieces and pieces[0] == "WITH":
            name = " ".join([name, pieces.pop(0), pieces.pop(0)])
        return name in allowed

    answer = either()
    assert not pieces, expression
    return answer


def faults(package, allowed):
    """What is wrong with a library."""
    if package["source"] is None:
        needed = [on for on in package["dependencies"] if on["req"] == "*" and not on.get("path")]
        return [f"takes any version of {on['name']}" for on in needed]
    found = []
    if package["source"] != CRATES_IO:
        found.append(f"comes from {package['source']}")
    if not package["license"]:
        found.append("names no licence")
    elif not is_allowed(package["license"], allowed):
        found.append(f"is under {package['license']}")
    return found


def test_the_reader_of_expressions_knows_and_from_or():
    allowed = {"MIT", "Apache-2.0 WITH LLVM-exception", "Unicode-3.0"}
    for expression, wanted in [
        ("MIT", True),
        ("GPL-3.0-only", False),
        ("GPL-3.0-only OR MIT", True),
        ("GPL-3.0-only/MIT", True),
        ("GPL-3.0-only AND MIT", False),
        ("(GPL-3.0-only OR MIT) AND Unicode-3.0", True),
        ("GPL-3.0-only AND Unicode-3.0 OR MIT", True),
        ("Apache-2.0 WITH LLVM-exception", True),
        ("Apache-2.0", False),
    ]:
        assert is_allowed(expression, allowed) == wanted, expression


def main():
    test_the_reader_of_expressions_knows_and_from_or()
    rules = RULES["licenses"]["allow"]
    single = {rule["crate"]: rule["allow"] for rule in RULES["licenses"].get("exceptions", [])}
    assert RULES["sources"]["unknown-registry"] == RULES["sources"]["unknown-git"] == "deny"
    wrong, seen = [], {}
    for manifest in MANIFESTS:
        for package in packages(manifest):
            called = f"{package['name']} {package['version']}"
            seen[called] = package
            allowed = {*rules, *single.get(package["name"], [])}
            wrong += [f"{called} {fault}" for fault in faults(package, allowed)]
    # What is allowed beyond need would let the next library in unseen.
    for rule in rules:
        fewer = set(rules) - {rule}
        named = {package["license"] for package in seen.values() if package["license"]}
        if all(is_allowed(one, fewer) for one in named if is_allowed(one, set(rules))):
            wrong.append(f"deny.toml allows {rule}, and nothing needs it")
    wrong += [
        f"deny.toml has an exception for {name}, and nothing needs it"
        for name in single
        if not any(package["name"] == name for package in seen.values())
    ]
    libraries = [package for package in seen.values() if package["source"]]
    print(f"{len(libraries)} libraries, their licences and sources looked at.")
    for fault in sorted(set(wrong)):
        print(f"not allowed: {fault}")
    sys.exit(1 if wrong else 0)


if __name__ == "__main__":
    main()
