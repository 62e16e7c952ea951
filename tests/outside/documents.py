"""Whether the documents lead anywhere: links, headings, rule numbers, names of files.

    python tests/outside/documents.py

Reads the Markdown pages and the comments of the code as text; needs nothing but Python. run.py
runs the same tests beside its own.
"""

import pathlib
import re
import sys
import traceback

ROOT = pathlib.Path(__file__).resolve().parents[2]
SKIPPED = {"target", ".git", "node_modules"}
WEIGHTS = ("mend this", "worth a look", "good to know")
OLD_WEIGHTS = ("must be mended", "should be looked at", "for information")
# What lies outside the repository, in the words in which it was once pointed at.
OUTSIDE = re.compile(r"shared/[A-Z]|\b(HOUSE|VOICE|LOOK)\.md|of the house\b|the house's\b|house plan")


def files(*endings):
    for path in sorted(ROOT.rglob("*")):
        inside = path.relative_to(ROOT).parts
        if path.suffix in endings and path.is_file() and not SKIPPED & set(inside):
            yield path


def pages():
    return [path for path in files(".md")]


def code():
    here = pathlib.Path(__file__).resolve()
    return [path for path in files(".rs", ".py", ".sh", ".mjs", ".toml", ".css") if path != here]


def comments(path):
    """The comments of a file as one line of text, so that a name broken over two lines is found."""
    marks = re.compile(r"^\s*(?://[/!]?|#!?|\*)\s?", re.M)
    return " ".join(marks.sub("", path.read_text()).split())


def anchors(path):
    headings = re.findall(r"^#+ (.+)$", path.read_text(), re.M)
    return {re.sub(r"[^\w -]", "", heading.lower()).replace(" ", "-") for heading in headings}


def rules():
    found = re.findall(r"^\| \*\*([SCTP]\d+)\*\* ", (ROOT / "docs/TRADE.md").read_text(), re.M)
    assert len(found) == len(set(found)) >= 40, found
    return set(found)


def none(lost):
    assert not lost, "\n".join(map(str, lost))


def test_every_link_of_a_page_leads_to_a_file_and_a_heading():
    lost = []
    for page in pages():
        for target in re.findall(r"\]\(([^)\s]+)\)", page.read_text()):
            if re.match(r"[a-z]+:", target):
                continue
            name, _, anchor = target.partition("#")
            file = (page.parent / name).resolve() if name else page
            if not file.exists() or anchor and anchor not in anchors(file):
                lost.append((page.relative_to(ROOT), target))
    none(lost)


def test_every_test_that_the_page_on_security_names_is_there():
    named = re.findall(r"`([a-z][a-z0-9]*(?:_[a-z0-9]+){2,})`", (ROOT / "docs/security.md").read_text())
    there = {name for path in files(".rs") for name in re.findall(r"\bfn (\w+)", path.read_text())}
    assert len(named) >= 25, named
    none([name for name in named if name not in there])


def test_every_document_that_is_named_is_there():
    lost = set()
    for path in [*pages(), *code()]:
        for name in re.findall(r"\bdocs/[\w./-]+\.(?:md|json|py|csv|mjs)\b", path.read_text()):
            if not (ROOT / name).exists():
                lost.add((path.relative_to(ROOT), name))
    none(lost)


def test_nothing_points_outside_the_repository():
    none([
        (path.relative_to(ROOT), match.group())
        for path in [*pages(), *code()]
        for match in OUTSIDE.finditer(path.read_text())
    ])


def test_rules_and_headings_that_comments_name_are_on_their_page():
    known, headings, lost = rules(), (ROOT / "docs/TRADE.md").read_text(), []
    for path in code():
        text = comments(path)
        if "TRADE" not in text:
            continue
        where = path.relative_to(ROOT)
        lost += [(where, rule) for rule in re.findall(r"\b[SCTP]\d{1,2}\b", text) if rule not in known]
        for match in re.finditer(r"TRADE\.md`?(?:, \"([^\"]+)\"| (\d))|TRADE (\d)", text):
            if not match[1] or not re.search(rf"^#+ {re.escape(match[1])}$", headings, re.M):
                lost.append((where, match.group()))
    none(lost)


def test_sections_of_the_definition_that_are_named_are_there():
    page = (ROOT / "docs/KEY.md").read_text()
    known = set(re.findall(r"^## (\d+)\.", page, re.M))
    named = re.compile(r"(?:docs/KEY\.md`?(?:,? section)? |[Ss]ections? )(\d+)(?!\.\d)(?: of `docs/KEY)?")
    none([
        (path.relative_to(ROOT), match.group())
        for path in code()
        if "KEY.md" in path.read_text()
        for match in named.finditer(comments(path))
        if match[1] not in known
    ])


def test_every_finding_has_the_weight_that_the_code_gives_it():
    page = (ROOT / "docs/findings.md").read_text()
    told = dict(re.findall(r"^### (\S+)\n\*([^*]+)\.\*", page, re.M))
    source = (ROOT / "crates/model/src/finding.rs").read_text()
    given = dict(re.findall(r'= "([a-z-]+)", (\w+);', source))
    assert told.keys() == given.keys(), told.keys() ^ given.keys()
    pairs = {(told[code], given[code]) for code in told}
    assert sorted(said for said, _ in pairs) == sorted(WEIGHTS), pairs
    assert len({name for _, name in pairs}) == len(WEIGHTS), pairs


def test_pages_have_one_set_of_weights():
    none([
        (page.relative_to(ROOT), old)
        for page in pages()
        for old in OLD_WEIGHTS
        if f"*{old}" in page.read_text()
    ])


def test_programs_and_people_read_one_set_of_weights():
    """Schemas, the words of the screens, and every text in the code (comments may say "must")."""
    texts = [(path, path.read_text()) for path in files(".json", ".ftl")]
    texts += [
        (path, "\n".join(re.findall(r'"(?:[^"\\\\]|\\\\.)*"', uncommented(path)))) for path in files(".rs")
    ]
    none([
        (path.relative_to(ROOT), old) for path, text in texts for old in OLD_WEIGHTS if old in text
    ])
    said = " ".join(text for _, text in texts)
    assert all(weight in said for weight in WEIGHTS)


def uncommented(path):
    return re.sub(r"^\s*//.*$", "", path.read_text(), flags=re.M)


def main():
    failed = 0
    for name, test in list(globals().items()):
        if name.startswith("test_"):
            try:
                test()
                print("ok  ", name[5:].replace("_", " "))
            except AssertionError:
                failed += 1
                print("FAIL", name[5:].replace("_", " "))
                traceback.print_exc(limit=1)
    sys.exit(failed > 0)


if __name__ == "__main__":
    main()
