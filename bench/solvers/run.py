"""Times Spinney's search against general-purpose solvers on the same drawn tables.

The solvers come from the Python registry.

    python run.py draw FILE SEEDS              writes the tables that Spinney's timing reads
    python run.py compare SEEDS OURS SECONDS   prints tables in Markdown; OURS is what
                                               `cargo bench --bench solvers -- FILE` printed
    python run.py plants SPINNEY FOLDER        times `spinney key` on cluster/plantTraits

bench.sh does all of it. A median is over the tables of one size and sort; each solver has
SECONDS of one core for each table, and "not finished" is said where that was not enough. pystreed
and CP-SAT search trees up to a depth: "told" is the depth of the best key, which they are given
for nothing; "any" is the deepest that a key can be. Exits 1 if a proved optimum of another
solver is not ours.
"""

import json
import pathlib
import resource
import subprocess
import sys
from statistics import median

import solvers
import tables
from solvers import limited, processor

CP_SAT_KINDS = 12  # beyond them CP-SAT is not tried: 12 × 12 already takes it seconds


def main():
    verb, *rest = sys.argv[1:]
    if verb == "draw":
        lines = (line for table in tables.drawn(int(rest[1])) for line in table.lines())
        pathlib.Path(rest[0]).write_text("\n".join(lines) + "\n")
    elif verb == "compare":
        compare(int(rest[0]), pathlib.Path(rest[1]).read_text(), float(rest[2]))
    elif verb == "plants":
        plants(pathlib.Path(rest[0]), pathlib.Path(rest[1]))
    else:
        sys.exit(__doc__)


class Ours:
    """One line of the timing of crates/build/benches/solvers.rs."""

    def __init__(self, cells):
        self.effort, self.longest = int(cells[0]), int(cells[1])
        self.seconds, self.proved = float(cells[3]) / 1e6, cells[4] == "true"


def compare(seeds, text, limit):
    lines = [line.split("\t") for line in text.splitlines() if "\t" in line]
    ours = {name: Ours(cells) for name, *cells in lines}
    all_tables = tables.drawn(seeds)
    missing = [table.name for table in all_tables if table.name not in ours]
    assert not missing, f"not timed: {missing}"
    wrong = []
    print(
        "| table | questions | ours | pystreed, told | ratio | pystreed, any | ratio "
        "| CP-SAT, told | ratio | same optimum |"
    )
    print("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |")
    groups = {}
    for table in all_tables:
        groups.setdefault((table.size, table.sort), []).append(table)
    for (size, sort), group in groups.items():
        cells, differing = compared(group, [ours[table.name] for table in group], size, limit)
        wrong += differing
        print("| " + " | ".join([f"{size[0]} × {size[1]}", sort, *cells]) + " |", flush=True)
    print()
    others(groups, ours, limit)
    if wrong:
        sys.exit("Not the same optimum: " + "; ".join(wrong))


def compared(group, here, size, limit):
    """The cells of a row, and what other solvers proved and we do not say."""
    assert all(one.proved for one in here), "ours is proved on every one of these"
    both = list(zip(group, here))
    runs = {
        "told": [limited(solvers.streed, limit, t, o.longest) for t, o in both],
        "any": [limited(solvers.streed, limit, t, size[0] - 1) for t in group],
    }
    if size[0] <= CP_SAT_KINDS:
        runs["cp"] = [limited(solvers.cp_sat, limit, t, o.longest) for t, o in both]
    agreed, differing = 0, []
    for found in runs.values():
        for (table, one), (effort, _) in zip(both, found):
            if effort == one.effort:
                agreed += 1
            elif effort is not None:
                differing.append(f"{table.name}: {effort}, ours {one.effort}")
    mine = median(one.seconds for one in here)
    cells = [said(mine)]
    for name in ("told", "any", "cp"):
        cells += timed(runs.get(name), mine, limit)
    return [*cells, f"{agreed} of {agreed + len(differing)}"], differing


def timed(found, mine, limit):
    """A median time and its ratio to ours, or what stood in the way."""
    if found is None:
        return ["not tried", ""]
    unproved = sum(effort is None for effort, _ in found)
    middle = median(seconds for _, seconds in found)
    if 2 * unproved >= len(found):
        late = f"not finished in {limit:g} s ({unproved} of {len(found)})"
        return [late, f"> {limit / mine:,.0f}"]
    note = f" ({unproved} of {len(found)} not finished in {limit:g} s)" if unproved else ""
    return [said(middle) + note, f"{middle / mine:,.0f}"]


def others(groups, ours, limit):
    """Programs that have another aim: whether a tree without error exists, and greedy trees."""
    print(
        "| table | questions | pydl8.5: depth | finds one | one less deep | "
        "scikit-learn | its tree: mean loss | worst | loses on |"
    )
    print("| --- | --- | --- | --- | --- | --- | --- | --- | --- |")
    for (size, sort), group in groups.items():
        shallowest = [shallowest_tree(table, limit) for table in group]
        depths = sorted({depth for depth, *_ in shallowest if depth})
        for table, (depth, *_) in zip(group, shallowest):
            deep = ours[table.name].longest
            assert depth is None or depth <= deep, f"{table.name}: our key is {deep} deep"
        unsure = sum(depth is None for depth, *_ in shallowest)
        yes = [seconds for _, seconds, _ in shallowest if seconds is not None]
        no = [seconds for *_, seconds in shallowest]
        trees = [limited(solvers.greedy_tree, limit, table) for table in group]
        losses = [effort / ours[t.name].effort - 1 for t, (effort, _) in zip(group, trees)]
        assert min(losses) >= 0, "nothing is below the least effort"
        span = " or ".join(map(str, depths)) + (f" ({unsure} not sure)" if unsure else "")
        cells = [
            f"{size[0]} × {size[1]}",
            sort,
            span or "?",
            said(median(yes)) if yes else f"not in {limit:g} s",
            said(median(no)),
            said(median(seconds for _, seconds in trees)),
            f"{sum(losses) / len(losses):.1%}",
            f"{max(losses):.1%}",
            f"{sum(loss > 0 for loss in losses)} of {len(losses)}",
        ]
        print("| " + " | ".join(cells) + " |", flush=True)


def shallowest_tree(table, limit):
    """The least depth at which pydl8.5 finds a tree without error, or None where it was not sure
    in time; seconds there; seconds to be sure, or not, that one less is too shallow."""
    # n kinds need at least this depth, whatever the questions.
    depth = (len(table.rows) - 1).bit_length()
    _, before = limited(solvers.without_error, limit, table, depth - 1)
    while True:
        found, seconds = limited(solvers.without_error, limit, table, depth)
        if found is None:
            return None, None, before
        if found:
            return depth, seconds, before
        before, depth = seconds, depth + 1


def said(seconds):
    if seconds < 1e-3:
        return f"{seconds * 1e6:.0f} µs"
    return f"{seconds * 1e3:.1f} ms" if seconds < 1 else f"{seconds:.1f} s"


def plants(spinney, folder):
    """`spinney key` on 136 plants x 31 traits, with its start and its reading."""
    outside = pathlib.Path(__file__).resolve().parents[2] / "tests/outside"
    sys.path.insert(0, str(outside))
    import plant_traits

    print("| cluster/plantTraits | budget | time | total | bound | above it | proved | alike |")
    print("| --- | --- | --- | --- | --- | --- | --- | --- |")
    for quarters in (False, True):
        where = folder / ("quarters" if quarters else "numbers")
        plant_traits.write(where, quarters)
        for budget in (1_000, 10_000, 60_000):
            before = processor(resource.RUSAGE_CHILDREN)
            run = subprocess.run(
                [spinney, "key", where, "--format", "json", "--budget", str(budget)],
                capture_output=True,
                text=True,
            )
            seconds = processor(resource.RUSAGE_CHILDREN) - before
            assert run.returncode in (0, 1), run.stderr
            answer = json.loads(run.stdout)
            total, bound = answer["cost"]["effort_total"], answer["proof"]["lower_bound"]
            alike = [f["place"] for f in answer["findings"] if f["code"] == "not-separable"]
            cells = [
                "in quarters" if quarters else "numbers as numbers",
                f"{budget:,}",
                said(seconds),
                f"{total:g}",
                f"{bound:g}",
                f"{total / bound - 1:.2%}",
                "yes" if answer["proof"]["optimal"] else "no",
                "; ".join(alike) or "none",
            ]
            print("| " + " | ".join(cells) + " |", flush=True)


main()
