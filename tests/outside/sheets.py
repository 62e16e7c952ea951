"""The printed sheets of the demo, looked at by readers that we did not write.

Imported by run.py. Each PDF of the demo is held against the machine-checkable part of PDF/UA-1
(ISO 14289-1:2014) that the PyPI package `pdfua` implements: 16 of the 106 rules, and it says itself
that this is no statement of conformance; one of them, empty headings, it cannot look at in our
files. The structure tree and the sizes of type are read by `pikepdf` (qpdf); typefaces and where
words stand, poppler says.
"""

import json
import pathlib
import re
import subprocess
import sys
import tempfile
from functools import lru_cache

import pikepdf

# Common practice, no source: a school printer leaves no less, and nobody reads smaller.
EDGE_MM = 5.0
LEAST_PT = 9.0
POINT_MM = 25.4 / 72

SPINNEY = pathlib.Path(sys.argv[1]).resolve()
DEMO = pathlib.Path(sys.argv[2]).resolve()
ROOT = pathlib.Path(__file__).resolve().parents[2]


@lru_cache
def sheets():
    found = sorted(DEMO.rglob("*.pdf"))
    assert len(found) >= 10, f"the demo has {len(found)} PDFs"
    return found


def named(path):
    return str(path.relative_to(DEMO))


def json_documents(text):
    """JSON documents that stand one after the other."""
    at, reader = 0, json.JSONDecoder()
    while text[at:].strip():
        document, at = reader.raw_decode(text, at + len(text[at:]) - len(text[at:].lstrip()))
        yield document


def test_no_sheet_breaks_a_rule_of_pdf_ua_that_another_program_checks():
    run = subprocess.run(
        [sys.executable, "-m", "pdfua", "check", "--format", "json", *map(str, sheets())],
        capture_output=True, timeout=600,
    )
    assert run.returncode in (0, 1, 2, 3), run.stderr.decode()
    told = list(json_documents(run.stdout.decode()))
    assert len(told) == len(sheets()), f"{len(told)} of {len(sheets())} were looked at"
    found = [(one["file"], finding) for one in told for finding in one["findings"]]
    assert not found, found[:5]


def test_every_typeface_of_a_sheet_stands_in_its_file():
    for path in sheets():
        lines = subprocess.run(["pdffonts", path], capture_output=True, text=True, check=True).stdout
        rows = [line.split() for line in lines.splitlines()[2:]]
        assert rows, named(path)
        # The columns after the name and the type: emb sub uni object ID.
        assert all(row[-5] == "yes" for row in rows), (named(path), lines)


def words(path):
    """Page, width and height in mm, and every word with its box in mm."""
    text = subprocess.run(["pdftotext", "-bbox", path, "-"], capture_output=True, text=True, check=True).stdout
    for number, page in enumerate(re.split(r"<page ", text)[1:], 1):
        wide, high = (float(size) * POINT_MM for size in re.match(r'width="([\d.]+)" height="([\d.]+)"', page).groups())
        for box in re.finditer(r'<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)</word>', page):
            yield number, wide, high, [float(at) * POINT_MM for at in box.groups()[:4]], box[5]


def test_no_word_stands_where_a_printer_does_not_print():
    for path in sheets():
        for number, wide, high, (left, top, right, bottom), word in words(path):
            inside = min(left, top, wide - right, high - bottom)
            assert inside >= EDGE_MM, f"{named(path)}, page {number}: “{word}” is {inside:.1f} mm from the edge"


def sizes(content):
    """The sizes of type that a page sets, in points, as they come out on paper."""
    scale, stack, size = 1.0, [], 0.0
    for operands, operator in pikepdf.parse_content_stream(content):
        match str(operator):
            case "q":
                stack.append(scale)
            case "Q":
                scale = stack.pop()
            case "cm":
                a, b, c, d = (float(part) for part in operands[:4])
                scale *= abs(a * d - b * c) ** 0.5
            case "Tf":
                size = float(operands[1])
            case "Tm":
                a, b, c, d = (float(part) for part in operands[:4])
                yield size * scale * abs(a * d - b * c) ** 0.5
            case "Tj" | "TJ":
                yield None


def test_nothing_is_smaller_than_anybody_reads():
    for path in sheets():
        with pikepdf.open(path) as pdf:
            for number, page in enumerate(pdf.pages, 1):
                set_in = [size for size in sizes(page) if size]
                assert set_in, f"{named(path)}, page {number} has no words"
                assert min(set_in) >= LEAST_PT - 0.01, f"{named(path)}, page {number}: {min(set_in):.1f} pt"


def drawn_lines(content):
    """Straight lines from one place to another, in mm on the page, and whether they are dashed."""
    matrix, stack, dash, start, path = (1, 0, 0, 1, 0, 0), [], [], None, []
    for operands, operator in pikepdf.parse_content_stream(content):
        def placed():
            x, y = (float(part) for part in operands[:2])
            a, b, c, d, e, f = matrix
            return (a * x + c * y + e) * POINT_MM, (b * x + d * y + f) * POINT_MM
        match str(operator):
            case "q":
                stack.append((matrix, dash))
            case "Q":
                matrix, dash = stack.pop()
            case "cm":
                a, b, c, d, e, f = (float(part) for part in operands[:6])
                A, B, C, D, E, F = matrix
                matrix = (a * A + b * C, a * B + b * D, c * A + d * C, c * B + d * D, e * A + f * C + E, e * B + f * D + F)
            case "d":
                dash = [float(part) for part in operands[0]]
            case "m":
                path.append([placed()])
            case "l":
                path[-1].append(placed())
            case "S" | "B" | "f" | "n" | "s" | "b" | "f*" | "B*":
                if str(operator) == "S":
                    yield from ((part[0], part[1], dash) for part in path if len(part) == 2)
                path = []


def test_the_key_for_the_pocket_is_cut_and_folded_where_its_pages_meet():
    found = [path for path in sheets() if path.name == "pocket.pdf"]
    assert len(found) >= 3, found
    for path in found:
        with pikepdf.open(path) as pdf:
            [page] = pdf.pages
            wide, high = (float(page.mediabox[at]) * POINT_MM for at in (2, 3))
            lines = [
                (*sorted([one, other]), dash) for one, other, dash in drawn_lines(page)
                if dash and max(abs(one[0] - other[0]), abs(one[1] - other[1])) > wide / 8
            ]
        near = lambda one, other: all(abs(a - b) < 0.1 for a, b in zip(one, other))
        is_there = lambda start, end, dotted: any(
            near(one, start) and near(other, end) and (dash[0] == 0) == dotted for one, other, dash in lines
        )
        w, h, edge = wide / 4, high / 2, 12
        assert is_there((w, h), (3 * w, h), False), f"{named(path)}: no cut in the middle"
        for at in (1, 2, 3):
            assert is_there((at * w, edge), (at * w, high - edge), True), f"{named(path)}: no fold {at}"
        assert is_there((edge, h), (w, h), True) and is_there((3 * w, h), (wide - edge, h), True), named(path)
        assert len(lines) == 6, f"{named(path)}: {len(lines)} lines"


def test_large_print_is_large_in_its_files():
    with tempfile.TemporaryDirectory() as folder:
        walk = ROOT / "crates/spinney/scenarios/hedge_walk"
        run = subprocess.run(
            [SPINNEY, "key", walk, "--out", folder, "--letters", "large"], capture_output=True, text=True, timeout=600,
        )
        assert run.returncode in (0, 1), run.stderr
        for name in ("short-key", "key-pages", "chart", "words", "word-cards", "try-out", "cards"):
            assert f"{name}.pdf" not in run.stdout.split("no large print")[1], run.stdout
            with pikepdf.open(pathlib.Path(folder) / f"{name}.pdf") as pdf:
                for number, page in enumerate(pdf.pages, 1):
                    # Captions, head and foot of a page are smaller than what is read.
                    set_in = [size for size in sizes(page) if size]
                    assert min(set_in) >= 14, f"{name}, page {number}: {min(set_in):.1f} pt"
                    assert max(set_in) >= 18, f"{name}, page {number}: {max(set_in):.1f} pt"


def test_a_class_of_28_in_seven_groups_takes_no_more_than_41_sheets_of_paper():
    # Half of the 83 that were printed before copies were counted (docs/measurements.md). The count
    # of the first page is held against its own table: copies × pages, printed on one side.
    with tempfile.TemporaryDirectory() as folder:
        walk = ROOT / "crates/spinney/scenarios/hedge_walk"
        run = subprocess.run(
            [SPINNEY, "key", walk, "--out", folder, "--children", "28", "--groups", "7"],
            capture_output=True, text=True, timeout=600,
        )
        assert run.returncode in (0, 1), run.stderr
        today = pathlib.Path(folder) / "today.pdf"
        text = subprocess.run(["pdftotext", "-l", "1", "-layout", today, "-"], capture_output=True, text=True, check=True)
        with pikepdf.open(today) as pdf:
            there = len(pdf.pages)
    said = int(re.search(r"(\d+) sheets of paper in all", text.stdout)[1])
    rows = [tuple(map(int, row)) for row in re.findall(r" {2,}(\d+) {2,}(\d+) {2,}(\d+)$", text.stdout, re.M)]
    assert len(rows) >= 5 and all(pages * copies == paper for pages, copies, paper in rows), rows
    assert sum(pages for pages, _, _ in rows) == there - 1, (rows, there)
    # And the first page itself.
    assert said == 1 + sum(paper for _, _, paper in rows) <= 41, (said, rows)


def elements(node, depth=0):
    """The structure tree in reading order: kind of element, and its alternative text."""
    if isinstance(node, pikepdf.Array):
        for child in node:
            yield from elements(child, depth)
    elif isinstance(node, pikepdf.Dictionary):
        if "/S" in node:
            yield str(node.S), str(node.get("/Alt", "")), depth
        if "/K" in node and node.get("/Type") != pikepdf.Name("/MCR"):
            yield from elements(node.K, depth + 1)


def test_pictures_say_what_they_show_and_headings_begin_with_the_first():
    figures = 0
    for path in sheets():
        with pikepdf.open(path) as pdf:
            tree = list(elements(pdf.Root.StructTreeRoot.K))
        levels = [int(kind[2:]) for kind, _, _ in tree if re.fullmatch(r"/H[1-6]", kind)]
        assert levels and levels[0] == 1, (named(path), levels)
        deeper = [(one, next_) for one, next_ in zip(levels, levels[1:]) if next_ > one + 1]
        assert not deeper, f"{named(path)}: a heading of level {deeper[0][1]} follows one of level {deeper[0][0]}"
        shown = [alt for kind, alt, _ in tree if kind == "/Figure"]
        figures += len(shown)
        assert all(alt.strip() for alt in shown), f"{named(path)}: a picture says nothing"
    assert figures > 20, figures
