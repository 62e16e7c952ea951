"""Fifty drawn tables of yes and no, and what a key of each takes at least as OR-tools finds it.

From a number to a table (kinds x characters, with how often each kind is met and how hard each
character is to see), and from a table to the least effort of docs/KEY.md, section 7, by a
constraint model that knows nothing of Spinney: questions are assigned to the couplets of a tree,
and every couplet costs the steps of its question times the weight of the kinds that reach it.
The solver (Google OR-tools, CP-SAT) proves the optimum by itself; it gets no hint.

Only cells that are yes or no: a node is then the set of its kinds (last line of docs/KEY.md).
"""

import random
from concurrent.futures import ThreadPoolExecutor

from ortools.sat.python import cp_model

TABLES = range(50)
WORDS = {1: "easy", 2: "fair", 3: "hard"}


class Table:
    """Rows of 0 and 1, a weight for each kind, the steps of a question about each character."""

    def __init__(self, number):
        draw = random.Random(number)
        kinds, characters = draw.choice([6, 7, 8]), draw.choice([6, 7, 8, 9])
        # From evenly spread characters to those that hardly part a heap.
        share = draw.choice([0.5, 0.5, 0.35, 0.25])
        rows = [[int(draw.random() < share) for _ in range(characters)] for _ in range(kinds)]
        if number % 10 == 9:
            rows[-1] = list(rows[0])  # two kinds that nothing parts
        self.rows = rows
        self.weights = [draw.choice([1, 1, 2, 4]) if number % 3 == 1 else 1 for _ in rows]
        self.steps = [draw.choice([1, 2, 3]) if number % 2 == 1 else 1 for _ in range(characters)]

    def write(self, folder):
        """As table.csv, kinds.csv and characters.csv."""
        names = [f"c{at}" for at in range(len(self.steps))]
        lines = [["kind", *names]]
        lines += [
            [f"k{at}", *("yes" if cell else "no" for cell in row)]
            for at, row in enumerate(self.rows)
        ]
        kinds = [["kind", "how often"]]
        kinds += [[f"k{at}", str(weight)] for at, weight in enumerate(self.weights)]
        characters = [["character", "states", "difficulty"]]
        characters += [[name, '"yes, no"', WORDS[steps]] for name, steps in zip(names, self.steps)]
        for name, sheet in [("table", lines), ("kinds", kinds), ("characters", characters)]:
            text = "\n".join(",".join(cells) for cells in sheet) + "\n"
            (folder / f"{name}.csv").write_text(text)


def least_efforts(tables, workers=2):
    """The proved optimum of each table, some at a time."""
    with ThreadPoolExecutor(workers) as pool:
        return list(pool.map(least_effort, tables))


def least_effort(table):
    """V of the whole table. Kinds with equal rows stay together (section 6), so are one."""
    together = {}
    for row, weight in zip(table.rows, table.weights):
        together[tuple(row)] = together.get(tuple(row), 0) + weight
    if len(together) == 1:
        return 0
    model = tree_model(list(together), list(together.values()), table.steps)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.max_time_in_seconds = 120
    status = solver.solve(model)
    assert status == cp_model.OPTIMAL, solver.status_name(status)
    return round(solver.objective_value)


def tree_model(rows, weights, steps):
    """n different kinds take exactly n - 1 couplets, each with a kind on both sides.

    Couplets are numbered by falling size, which puts each after the one it comes from.
    """
    kinds, characters = range(len(rows)), range(len(steps))
    couplets = range(len(rows) - 1)
    model = cp_model.CpModel()
    asks = [[model.new_bool_var(f"{c} asks {q}") for q in characters] for c in couplets]
    here = [[model.new_bool_var(f"{k} comes to {c}") for k in kinds] for c in couplets]
    after = [
        {
            (from_, answer): model.new_bool_var(f"{c} after {from_}, {answer}")
            for from_ in range(c)
            for answer in (0, 1)
        }
        for c in couplets
    ]
    efforts = []
    for c in couplets:
        model.add_exactly_one(asks[c])
        if c == 0:
            model.add_bool_and(here[0])
        else:
            model.add_exactly_one(after[c].values())
            model.add(sum(here[c]) <= sum(here[c - 1]))
        for (from_, answer), comes in after[c].items():
            for k in kinds:
                at_both = [~comes, ~here[c][k]]
                model.add_bool_or([*at_both, here[from_][k]])
                for q in characters:
                    if rows[k][q] == answer:
                        there = [~comes, ~asks[from_][q], ~here[from_][k]]
                        model.add_bool_or([*there, here[c][k]])
                    else:
                        model.add_bool_or([*at_both, ~asks[from_][q]])
        for q in characters:
            for answer in (0, 1):
                some = [here[c][k] for k in kinds if rows[k][q] == answer]
                model.add_bool_or([~asks[c][q], *some])
        flow = sum(weights[k] * here[c][k] for k in kinds)
        effort = model.new_int_var(0, sum(weights) * max(steps), f"effort of {c}")
        for q in characters:
            model.add(effort >= steps[q] * flow).only_enforce_if(asks[c][q])
        efforts.append(effort)
    for from_ in couplets:
        for answer in (0, 1):
            model.add_at_most_one(after[c][from_, answer] for c in couplets if c > from_)
    model.minimize(sum(efforts))
    return model
