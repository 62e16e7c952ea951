"""Writes the large tables of docs/measurements.md to stdout: `big` or `mid`."""

import random
import sys

random.seed(1)
big = sys.argv[1] == "big"
kinds = 10_000 if big else 300
rows = ["kind," + ",".join(f"c{i}" for i in range(30))]


def cell():
    # Draws in the order in which the figures were taken: two draws, then the choice.
    if big:
        third = "lobed or toothed" if random.random() < 0.3 else "smooth"
        return random.choice(["toothed", "smooth", third])
    rare = "?" if random.random() < 0.2 else "yes or no" if random.random() < 0.4 else "no"
    return random.choice(["yes", "no", "no", "no", rare])


for kind in range(kinds):
    rows.append(f"kind {kind}," + ",".join(cell() for _ in range(30)))
print("\n".join(rows), end="")
