#!/usr/bin/env python3
"""Makes first inputs for fuzz/run from what the program itself writes: python3 fuzz/seeds.py PROGRAM

Tables, keys and sheets of the three invented outings, a workbook, links, a collection's file, its
bundle and its lines, and one input for every form on the screens; pictures and old lines come from
the tests. What is called small, or for what is in it, was written by hand; what is called found_…
was found by the fuzzer. Uses no network but 127.0.0.1.
"""

import html.parser
import pathlib
import re
import shutil
import sqlite3
import subprocess
import sys
import tempfile
import urllib.parse
import urllib.request
import zipfile

BETWEEN = b"\n=====\n"
CORPUS = pathlib.Path(__file__).parent / "corpus"


def put(reader, name, content):
    folder = CORPUS / reader
    folder.mkdir(parents=True, exist_ok=True)
    (folder / name).write_bytes(content)


class Forms(html.parser.HTMLParser):
    """The forms and the links of a page."""

    def __init__(self):
        super().__init__()
        self.links, self.forms, self.open = [], [], None

    def handle_starttag(self, tag, attributes):
        said = dict(attributes)
        if tag == "a" and (said.get("href") or "").startswith("/"):
            self.links.append(said["href"].split("#")[0])
        if tag == "form" and said.get("method", "get").lower() == "post":
            self.open = (said.get("action", ""), [])
            self.forms.append(self.open)
        elif self.open and tag in ("input", "button", "select", "textarea") and said.get("name"):
            self.open[1].append((said["name"], said.get("value") or "1"))

    def handle_endtag(self, tag):
        if tag == "form":
            self.open = None


def forms_of(address):
    """Every form that can be reached by links, by its address and the names of its fields."""
    seen, waiting, found = set(), ["/"], {}
    while waiting and len(seen) < 120:
        path = waiting.pop(0)
        if path in seen:
            continue
        seen.add(path)
        try:
            with urllib.request.urlopen(address + path) as answer:
                if "html" not in answer.headers.get("content-type", ""):
                    continue
                page = Forms()
                page.feed(answer.read().decode())
        except urllib.error.HTTPError:
            continue
        waiting += page.links
        for action, fields in page.forms:
            names = tuple(sorted({re.sub(r"\d+", "1", name) for name, _ in fields}))
            found.setdefault((re.sub(r"\d+", "1", action), names), (action, fields))
    return found.values()


def main(program):
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)

        def run(*words):
            return subprocess.run([program, *map(str, words)], capture_output=True, cwd=folder)

        run("demo", "--out", folder / "demo")
        for visit in ("hedge_walk", "pond_tray", "pasta_shapes"):
            at = folder / "demo" / visit
            put("table-csv", f"{visit}.csv", (at / "table.csv").read_bytes())
            sheets = [(at / f"{name}.csv").read_bytes().strip(b"\n")
                      for name in ("table", "characters", "kinds", "about")]
            put("second-sheets", f"{visit}.txt", BETWEEN.join(sheets))
            for key in at.glob("key_*.txt"):
                put("key-text", f"{visit}_{key.name}", key.read_bytes())
            put("key-json", f"{visit}.json", (at / "best" / "key.json").read_bytes())
        hedge = folder / "demo" / "hedge_walk"
        run("check", hedge / "table.csv", "--characters", hedge / "characters.csv",
            "--key", hedge / "key_by_hand.txt", "--write-links", "links.txt")
        put("links", "hedge_walk.txt", (folder / "links.txt").read_bytes())

        run("template", "finds.xlsx")
        workbook = zipfile.ZipFile(folder / "finds.xlsx")
        put("table-xlsx", "template.xlsx", (folder / "finds.xlsx").read_bytes())
        parts = ["xl/workbook.xml", "xl/_rels/workbook.xml.rels", "xl/sharedStrings.xml", "xl/styles.xml"]
        parts += sorted(name for name in workbook.namelist() if "worksheets/sheet" in name)
        put("xlsx-parts", "template.txt", BETWEEN.join(workbook.read(name) for name in parts[:6]))

        tests = CORPUS.parent.parent / "crates"
        put("picture", "four_pixels.jpg", (tests / "spinney/tests/screens/four_pixels.jpg").read_bytes())
        put("journal", "form_1.jsonl", (tests / "exchange/src/journal/tests/form_1.jsonl").read_bytes())

        server = subprocess.Popen([program, "open", "--no-browser"], stdout=subprocess.PIPE, text=True)
        try:
            address = ""
            while not address:
                address = (re.findall(r"http://127\S+", server.stdout.readline()) or [""])[0].rstrip("/")
            for number, (action, fields) in enumerate(forms_of(address)):
                text = f"{action}\n{urllib.parse.urlencode(fields)}".encode()
                put("form", f"{number:03}.txt", text)
            copy = urllib.request.urlopen(urllib.request.Request(address + "/saved/copy.zip")).read()
        except urllib.error.HTTPError as error:
            sys.exit(f"no copy: {error}")
        finally:
            server.kill()
        (folder / "copy.zip").write_bytes(copy)
        put("bundle", "hedge_walk.zip", copy)
        put("journal", "hedge_walk.jsonl", zipfile.ZipFile(folder / "copy.zip").read("journal.jsonl"))
        run("unpack", "copy.zip", "copy.spinney")
        put("collection-file", "hedge_walk.spinney", (folder / "copy.spinney").read_bytes())
        empty = folder / "empty.spinney"
        shutil.copy(folder / "copy.spinney", empty)
        with sqlite3.connect(empty) as rows:
            rows.execute("delete from journal")
        put("collection-file", "no_lines.spinney", empty.read_bytes())


if __name__ == "__main__":
    main(str(pathlib.Path(sys.argv[1]).resolve()))
