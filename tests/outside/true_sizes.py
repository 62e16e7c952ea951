"""Lengths on paper, measured in the PDF by poppler: the ruler of today, and the line to check by.

From a file to millimetres. The lengths that a ruler must have are read off the questions of its
key, as the children read them, and not off what the press worked out.
"""

import json
import re
import subprocess

#: A point of PDF in mm (ISO 32000-1, 8.3.2.3: 1/72 inch).
POINT = 25.4 / 72
#: How exact a length must be, in mm.
EXACT = 0.1
#: The widths of the lines that are looked for, in mm: lengths and 0 of a strip; the check line.
MARK, CHECK = 0.6, 0.3
#: A strip is as high as its scale and at least one label, in mm.
LOW = 20.0
#: Numbers with a unit of length in a question, in mm.
UNITS = {"mm": 1, "cm": 10, "m": 1000}


def straight_lines(pdf):
    """Every straight line as page, width and ends in mm, read by pdftocairo."""
    pages = subprocess.run(["pdfinfo", pdf], capture_output=True, check=True).stdout.decode()
    many = int(re.search(r"Pages:\s+(\d+)", pages).group(1))
    for page in range(1, many + 1):
        svg = subprocess.run(
            ["pdftocairo", "-svg", "-f", str(page), "-l", str(page), pdf, "-"],
            capture_output=True,
            check=True,
        ).stdout.decode()
        for style, d in re.findall(r'<path style="([^"]*)" d="([^"]*)"', svg):
            width = re.search(r"stroke-width:([\d.]+)", style)
            if not width or "fill:none" not in style or "C" in d:
                continue
            for x1, y1, x2, y2 in re.findall(
                r"M ([-\d.]+) ([-\d.]+) L ([-\d.]+) ([-\d.]+)", d
            ):
                ends = [float(end) * POINT for end in (x1, y1, x2, y2)]
                yield page, float(width.group(1)) * POINT, *ends


def near(one, other):
    return abs(one - other) < EXACT


def marked_lengths(pdf):
    """The lengths of every strip: how far its upright lines are from the first of them."""
    uprights = [
        (page, round(min(y1, y2), 1), x1)
        for page, width, x1, y1, x2, y2 in straight_lines(pdf)
        if near(width, MARK) and near(x1, x2) and abs(y1 - y2) > LOW
    ]
    strips = {}
    for page, top, x in uprights:
        strips.setdefault((page, top), []).append(x)
    return [[x - min(xs) for x in sorted(xs)[1:]] for xs in strips.values()]


def asked_lengths(key):
    """The lengths that the questions of a key name, in mm."""
    lengths = set()
    for couplet in json.loads(key.read_text())["key"]["couplets"]:
        ask = couplet.get("ask") or {}
        if ask.get("unit") != "mm":
            continue
        number, unit = re.search(r"([\d.,]+)\s*(mm|cm|m)\b", couplet["question"]).groups()
        lengths.add(float(number.replace(",", ".")) * UNITS[unit])
    return sorted(lengths)


def has_check_line(pdf):
    """Whether there is a level line of exactly 100 mm."""
    return any(
        near(width, CHECK) and near(y1, y2) and near(abs(x1 - x2), 100.0)
        for _, width, x1, y1, x2, y2 in straight_lines(pdf)
    )
