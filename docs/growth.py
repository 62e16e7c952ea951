"""Draws docs/pictures/growth.svg from docs/growth.csv: how cost and gap grow with the table.

    cargo bench -p spinney-build --bench flora -- --growth > docs/growth.csv
    python3 docs/growth.py

Three panels: kinds, characters, varying cells, one growing at a time. Above: processor time for
the same budget of heaps. Below: how far the best key is from the bound. Standard library only.
"""

import csv
import math
from pathlib import Path

HERE = Path(__file__).parent
PANELS = [
    ("kinds", "kinds (60 characters, 10 % varying)", lambda r: (r["characters"], r["varying"]) == (60, 10)),
    ("characters", "characters (100 kinds, 10 % varying)", lambda r: (r["kinds"], r["varying"]) == (100, 10)),
    ("varying", "varying cells in % (100 kinds, 60 characters)", lambda r: (r["kinds"], r["characters"]) == (100, 60)),
]
WIDE, HIGH, LEFT, TOP, GAP = 250, 150, 64, 34, 52


def read():
    rows = []
    with open(HERE / "growth.csv", newline="", encoding="utf-8") as file:
        for row in csv.DictReader(file):
            row = {name: float(value) for name, value in row.items()}
            if row not in rows:
                rows.append(row)
    return rows


def text(x, y, words, anchor="middle", more=""):
    return f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}" {more}>{words}</text>'


def panel(rows, across, value, x, y, top, unit):
    out = [f'<path d="M{x} {y}v{HIGH}h{WIDE}" fill="none" stroke="#444"/>']
    values = sorted({row[across] for row in rows})
    place = {v: x + WIDE * (at + 0.5) / len(values) for at, v in enumerate(values)}
    for v in values:
        out.append(text(place[v], y + HIGH + 16, f"{v:g}"))
    for at in range(5):
        level = top * at / 4
        down = y + HIGH - HIGH * at / 4
        out.append(f'<path d="M{x} {down:.1f}h{WIDE}" stroke="#ddd"/>')
        out.append(text(x - 6, down + 4, f"{level:.3g}{unit}", "end"))
    points = [(place[row[across]], y + HIGH - HIGH * row[value] / top, row) for row in rows]
    points.sort(key=lambda point: point[0])
    line = " ".join(f"{px:.1f},{py:.1f}" for px, py, _ in points)
    out.append(f'<polyline points="{line}" fill="none" stroke="#1b6b45" stroke-width="2"/>')
    out += [f'<circle cx="{px:.1f}" cy="{py:.1f}" r="3.5" fill="#1b6b45"/>' for px, py, _ in points]
    return out


def nice(largest):
    step = 10 ** math.floor(math.log10(max(largest, 1e-9)))
    return next(step * m for m in (1, 2, 4, 5, 8, 10, 20) if step * m >= largest)


def main():
    rows = read()
    for row in rows:
        row["s"] = row["ms"] / 1000
    tops = {"s": nice(max(row["s"] for row in rows)), "gap": nice(max(row["gap"] for row in rows))}
    width = 3 * (WIDE + LEFT) + 20
    height = TOP + 2 * (HIGH + GAP) + 20
    out = [
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" font-family="sans-serif" font-size="11" role="img">',
        "<title>How cost grows with kinds, characters and varying cells</title>",
        f'<rect width="{width}" height="{height}" fill="#fff"/>',
    ]
    for at, (across, label, belongs) in enumerate(PANELS):
        x = LEFT + at * (WIDE + LEFT)
        mine = [row for row in rows if belongs(row)]
        for down, (value, unit, title) in enumerate(
            [("s", " s", "processor time"), ("gap", " %", "best key above the bound")]
        ):
            y = TOP + down * (HIGH + GAP)
            out.append(text(x, y - 10, title, "start", 'font-weight="bold"'))
            out += panel(mine, across, value, x, y, tops[value], unit)
            out.append(text(x + WIDE / 2, y + HIGH + 32, label))
    out.append("</svg>")
    (HERE / "pictures" / "growth.svg").write_text("\n".join(out) + "\n", encoding="utf-8")


main()
