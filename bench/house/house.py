"""How large the program is: lines, small files, circles, English where there should be none.

    python3 bench/house/house.py [CHECKOUT]

Counts by reading the sources, without compiling. Without tests: files called tests.rs, in folders
called tests, and `mod tests { … }` at the end of a file. A circle is a set of files of one crate that
import each other, over however many steps (strongly connected, after Tarjan 1972); a file and
the files of its own folder count as one, since a folder is one room.
"""

import pathlib
import re
import sys

ROOT = pathlib.Path(sys.argv[1] if len(sys.argv) > 1 else pathlib.Path(__file__).parents[2])
MODULES = re.compile(r"\b(?:crate|super)(?:::\w+)+")
SENTENCE = re.compile(r'"((?:[^"\\]|\\.|\\\n)*)"')


def without_tests(text):
    return re.split(r"\n#\[cfg\(test\)\]\nmod tests \{", text)[0]


def files(crate):
    for path in sorted((ROOT / "crates" / crate / "src").rglob("*.rs")):
        if path.name != "tests.rs" and "tests" not in path.parts:
            yield path, without_tests(path.read_text())


def english(text):
    """Texts of four words or more, outside comments."""
    code = re.sub(r"//[^\n]*", "", text)
    found = SENTENCE.findall(code)
    return sum(1 for said in found if len(re.findall(r"[A-Za-z]{2,}", said)) >= 4)


def texts(code):
    """What stands between quotation marks, without comments and single signs."""
    sign = re.compile(r"//[^\n]*|'(?:\\.[^']*|[^\\'])'|r#\"(.*?)\"#|\"((?:[^\"\\]|\\.)*)\"", re.S)
    for found in sign.finditer(code):
        text = found[1] if found[1] is not None else found[2]
        if text is not None:
            yield re.sub(r"\\\n\s*", "", text).replace("\\n", " ").replace('\\"', '"')


def sentences(text):
    """Sentences for a person: begun with a capital or a gap, of three words, ended as sentences
    are; the same rule as in `tidy.rs`."""
    count = 0
    for said in texts(text):
        said = said.strip()
        words = [word for word in said.split() if len(re.findall(r"[^\W\d_]", word)) > 1]
        ends = said.rstrip("\"”’)").endswith((".", "?", "!"))
        begins = said[:1].isupper() or said[:1] in ("{", "“", '"')
        count += len(words) >= 3 and ends and begins
    return count


def rooms_of_desk():
    """What each room of the desk imports: `pages::key`, `worked`."""
    base = ROOT / "crates/desk/src"
    def room(parts):
        parts = [part.removesuffix(".rs") for part in parts]
        return "::".join(parts[:2]) if parts[0] == "pages" and len(parts) > 1 else parts[0]
    edges, known = {}, set()
    for path, text in files("desk"):
        known.add(room(path.relative_to(base).parts))
    for path, text in files("desk"):
        parts = path.relative_to(base).parts
        here = room(parts)
        code = re.sub(r"//[^\n]*", "", text)
        # use crate::{a, b::c};
        code = re.sub(
            r"crate::\{([^}]*)\}",
            lambda m: " ".join("crate::" + part.strip() for part in m[1].split(",")),
            code,
        )
        for said in MODULES.findall(code):
            names = said.split("::")
            if names[0] == "super":
                module = [part.removesuffix(".rs") for part in parts]
                while names and names[0] == "super":
                    module, names = module[:-1], names[1:]
                names = module + names
            else:
                names = names[1:]
            if not names:
                continue
            to = room(names)
            if to not in known:
                to = names[0]
            if to in known and to != here:
                edges.setdefault(here, set()).add(to)
    return edges


def circles(edges):
    index, low, stack, on, found, count = {}, {}, [], set(), [], [0]

    def visit(at):
        index[at] = low[at] = count[0]
        count[0] += 1
        stack.append(at)
        on.add(at)
        for to in sorted(edges.get(at, ())):
            if to not in index:
                visit(to)
                low[at] = min(low[at], low[to])
            elif to in on:
                low[at] = min(low[at], index[to])
        if low[at] == index[at]:
            ring = []
            while True:
                one = stack.pop()
                on.discard(one)
                ring.append(one)
                if one == at:
                    break
            if len(ring) > 1:
                found.append(sorted(ring))

    for at in sorted(edges):
        if at not in index:
            visit(at)
    return found


def main():
    crates = sorted(path.name for path in (ROOT / "crates").iterdir() if path.is_dir())
    lines, small, said, spoken = {}, 0, {}, {}
    for crate in crates:
        all_files = list(files(crate))
        lines[crate] = sum(text.count("\n") for _, text in all_files)
        small += sum(1 for _, text in all_files if text.count("\n") < 60)
        said[crate] = sum(english(text) for _, text in all_files)
        spoken[crate] = sum(sentences(text) for _, text in all_files)
    print("| crate | lines | texts of four words | sentences for a person |")
    for crate in crates:
        print(f"| {crate} | {lines[crate]:,} | {said[crate]} | {spoken[crate]} |")
    print(f"| all | {sum(lines.values()):,} | | {sum(spoken.values())} |")
    print(f"files under 60 lines: {small}")
    rings = circles(rooms_of_desk())
    print(f"circles of rooms in the desk: {len(rings)} {[len(ring) for ring in rings]} {rings}")
    over_edits = 0
    for crate in ("exchange", "collection", "desk"):
        for _, text in files(crate):
            if re.search(r"\bEdit::\w+", text):
                over_edits += len(re.findall(r"^\s*(?:\w+ )?_ =>", text, re.M))
    print(f"wildcards in files that match over edits: {over_edits}")
    clones = 0
    for crate in ("collection", "desk", "spinney"):
        for _, text in files(crate):
            clones += len(re.findall(r"\b(?:collection|history|now)\.clone\(\)", text))
    print(f"clones of a collection or its history: {clones}")


main()
