"""Drawn tables of 0 and 1 for all solvers alike, and the file for Spinney's own timing.

Kinds differ pairwise. "even": every character is yes on about half of the kinds, every question
one step; "skewed": yes on about a fifth; "steps": even, questions of 1, 2 or 3 steps.
"""

import random

SIZES = [(8, 8), (12, 12), (16, 16), (20, 24)]
SORTS = {"even": 0.5, "skewed": 0.2, "steps": 0.5}


class Table:
    """Rows of 0 and 1, and the steps of a question about each character."""

    def __init__(self, sort, kinds, characters, seed):
        draw = random.Random(f"{sort} {kinds} {characters} {seed}")
        self.sort, self.seed = sort, seed
        self.name = f"{sort}-{kinds}x{characters}-{seed}"
        self.size = (kinds, characters)
        rows = set()
        self.rows = []
        while len(self.rows) < kinds:
            row = tuple(int(draw.random() < SORTS[sort]) for _ in range(characters))
            if row not in rows:
                rows.add(row)
                self.rows.append(row)
        self.steps = [draw.choice([1, 2, 3]) if sort == "steps" else 1 for _ in range(characters)]

    def lines(self):
        """As crates/build/benches/solvers.rs reads it."""
        yield f"table {self.name}"
        yield "steps " + " ".join(map(str, self.steps))
        yield "weights " + " ".join("1" for _ in self.rows)
        for row in self.rows:
            yield "row " + "".join(map(str, row))
        yield "end"


def drawn(seeds):
    """All sorts and sizes, `seeds` tables of each."""
    return [
        Table(sort, kinds, characters, seed)
        for kinds, characters in SIZES
        for sort in SORTS
        for seed in range(1, seeds + 1)
    ]
