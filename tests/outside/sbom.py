"""What the program is made of, as one list (CycloneDX 1.5, JSON), to standard output.

    python tests/outside/sbom.py [TARGET] > sbom.json

Every library that is compiled into `spinney` for a target (this machine's unless one is named, such
as x86_64-pc-windows-msvc), with version, licence, origin and the SHA-256 of Cargo.lock; what only
tests and build scripts need is left out. The same lock file gives the same bytes. Uses nothing but
cargo.
"""

import json
import pathlib
import re
import subprocess
import sys
import tomllib

ROOT = pathlib.Path(__file__).resolve().parents[2]


def known(target):
    """What cargo knows of the libraries for a target."""
    asked = ["cargo", "metadata", "--format-version", "1", "--locked", "--filter-platform", target]
    answer = subprocess.run(asked, stdout=subprocess.PIPE, check=True, cwd=ROOT)
    return json.loads(answer.stdout)


def this_machine():
    said = subprocess.run(["rustc", "-vV"], stdout=subprocess.PIPE, check=True, text=True).stdout
    return re.search(r"^host: (\S+)$", said, re.M)[1]


def compiled_in(resolved, root):
    """From each library that is compiled in to those that it needs."""
    nodes = {node["id"]: node for node in resolved["nodes"]}
    needs, waiting = {}, [root]
    while waiting:
        at = waiting.pop()
        if at in needs:
            continue
        # A kind of null is neither a test's nor a build script's.
        needs[at] = [
            on["pkg"]
            for on in nodes[at]["deps"]
            if any(kind["kind"] is None for kind in on["dep_kinds"])
        ]
        waiting += needs[at]
    return needs


def component(package, sums):
    name, version = package["name"], package["version"]
    one = {"type": "library", "bom-ref": reference(package), "name": name, "version": version}
    if package["license"]:
        # Older manifests write a stroke for OR.
        one["licenses"] = [{"expression": package["license"].replace("/", " OR ")}]
    if package["source"]:
        one["purl"] = f"pkg:cargo/{name}@{version}"
        one["hashes"] = [{"alg": "SHA-256", "content": sums[name, version]}]
    return one


def reference(package):
    return f"{package['name']}@{package['version']}"


def main():
    cargo = known(sys.argv[1] if len(sys.argv) > 1 else this_machine())
    packages = {package["id"]: package for package in cargo["packages"]}
    root = next(at for at, package in packages.items() if package["name"] == "spinney")
    needs = compiled_in(cargo["resolve"], root)
    lock = tomllib.loads((ROOT / "Cargo.lock").read_text())["package"]
    sums = {(one["name"], one["version"]): one["checksum"] for one in lock if "checksum" in one}
    order = sorted(needs, key=lambda at: reference(packages[at]))
    program = {**component(packages[root], sums), "type": "application"}
    answer = {
        "bomFormat": "CycloneDX",
        "specVersion": "1.5",
        "version": 1,
        "metadata": {"component": program},
        "components": [component(packages[at], sums) for at in order if at != root],
        "dependencies": [
            {
                "ref": reference(packages[at]),
                "dependsOn": sorted(reference(packages[on]) for on in set(needs[at])),
            }
            for at in order
        ],
    }
    json.dump(answer, sys.stdout, indent=1, ensure_ascii=False)
    print()


if __name__ == "__main__":
    main()
