#!/usr/bin/env python3
"""Counts the bytes of the desk as WebAssembly: code by crate, and the files that stand in its data.

    CARGO_PROFILE_POCKET_STRIP=false ./pocket /tmp/named.html
    python3 bench/pocket/bytes.py target/pocket/desk.wasm [--least BYTES]

The code is counted function by function under the crate that its name begins with: what was made of a
generic function for another crate counts where it was written, what was inlined where it went.
Names are those of the WebAssembly name section (extended name section, WebAssembly 3.0, appendix);
a build that is stripped of them has none, and is refused. Files are looked for in the data as they
stand in the repository.
"""
import collections
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]


def leb(data, at):
    """An unsigned LEB128 number and where it ends."""
    value = shift = 0
    while True:
        byte = data[at]
        at += 1
        value |= (byte & 0x7F) << shift
        if byte < 0x80:
            return value, at
        shift += 7


def sections(wasm):
    """Number, name (of custom ones) and content of each section."""
    if wasm[:8] != b"\0asm\1\0\0\0":
        sys.exit("This is not WebAssembly. Build it with ./pocket.")
    at = 8
    while at < len(wasm):
        number = wasm[at]
        length, begin = leb(wasm, at + 1)
        content, name = wasm[begin : begin + length], ""
        if number == 0:
            size, after = leb(content, 0)
            name, content = content[after : after + size].decode(), content[after + size :]
        yield number, name, content
        at = begin + length


def imported_functions(content):
    """How many functions the import section brings."""
    count, at = leb(content, 0)
    functions = 0
    for _ in range(count):
        for _ in range(2):
            size, at = leb(content, at)
            at += size
        kind = content[at]
        at += 1
        if kind != 0:
            sys.exit(f"An import of kind {kind} is not expected here.")
        functions += 1
        _, at = leb(content, at)
    return functions


def bodies(content):
    """The size of each function's body, with its length before it."""
    count, at = leb(content, 0)
    for _ in range(count):
        size, after = leb(content, at)
        yield after - at + size
        at = after + size


def names(content):
    """Function names by number."""
    at, found = 0, {}
    while at < len(content):
        kind = content[at]
        size, begin = leb(content, at + 1)
        if kind == 1:
            count, here = leb(content, begin)
            for _ in range(count):
                number, here = leb(content, here)
                length, here = leb(content, here)
                found[number] = content[here : here + length].decode(errors="replace")
                here += length
        at = begin + size
    return found


def crate(name):
    """The crate in a mangled or plain name of Rust: the first that a path in it begins with."""
    legacy = re.match(r"_ZN(\d+)", name)
    if legacy:
        length, begin = int(legacy[1]), legacy.end()
        first = name[begin : begin + length]
        inner = re.search(r"(?:LT\$|RF\$|\$u20\$|^)(?:mut\$u20\$|dyn\$u20\$)?_?([a-z][a-z0-9_]*)\.\.", first)
        return inner[1] if inner else first
    v0 = re.search(r"C(?:s[0-9A-Za-z]*_)?(\d+)_?([a-z_][a-z0-9_]*)", name) if name.startswith("_R") else None
    if v0:
        return v0[2][: int(v0[1])]
    plain = re.search(r"(?:^|[<& (])(?:dyn |mut )?([a-z][a-z0-9_]*)::", name)
    return plain[1] if plain else "no name of Rust (memory, mathematics)"


def table(rows, least):
    small = sum(size for _, size in rows if size < least)
    for name, size in sorted(rows, key=lambda row: -row[1]):
        if size >= least:
            print(f"{size:>10,}  {name}")
    if small:
        print(f"{small:>10,}  smaller ones together")


def main():
    given = sys.argv[1:]
    least = int(given.pop(given.index("--least") + 1)) if "--least" in given else 40_000
    given = [word for word in given if word != "--least"]
    if len(given) != 1:
        sys.exit(__doc__)
    wasm = pathlib.Path(given[0]).read_bytes()
    imported, sizes, called, data, others = 0, [], {}, b"", 0
    for number, name, content in sections(wasm):
        if number == 2:
            imported = imported_functions(content)
        elif number == 10:
            sizes = list(bodies(content))
        elif number == 11:
            data = content
        elif number == 0 and name == "name":
            called = names(content)
        elif number != 0:
            others += len(content)
    if not called:
        sys.exit("It has no names: build it with CARGO_PROFILE_POCKET_STRIP=false.")
    crates = collections.Counter()
    for index, size in enumerate(sizes):
        crates[crate(called.get(imported + index, ""))] += size
    print(f"{sum(sizes):>10,}  code, of it by crate:")
    table(list(crates.items()), least)
    files = collections.Counter()
    for path in sorted(ROOT.glob("crates/**/*")):
        if path.suffix not in {".ttf", ".woff2", ".ftl", ".css", ".mjs", ".js", ".csv", ".svg", ".txt", ".md"}:
            continue
        content = path.read_bytes()
        if len(content) > 200 and content in data:
            inside = path.relative_to(ROOT / "crates").parts
            files[f"{inside[0]}: {path.suffix[1:]}" if path.suffix != ".csv" else "the invented walk"] += len(content)
    print(f"{len(data):>10,}  data, of it files as they are:")
    table(list(files.items()), 0)
    print(f"{len(data) - sum(files.values()):>10,}  other data: tables of Unicode and of the libraries, texts")
    print(f"{others:>10,}  types, tables, what else there is")


if __name__ == "__main__":
    main()
