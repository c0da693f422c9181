#!/usr/bin/env python3
"""Writes the notices of everything of others that is inside a published program, with versions and licences.

notices.py PACKAGES FONTS ASSETS...: the folder of restored packages, the folder of fonts, and the project.assets.json of each system
the program was published for. What a package says of its licence is in the package itself; nothing is fetched.
"""
import json
import pathlib
import re
import sys

# What is only used to build, or is a part of the program: none of it is inside.
LICENCE_FILES = ("license", "license.txt", "license.md", "third-party-notices.txt", "thirdpartynotices.txt")


def packages_of(assets):
    """Names and versions of all packages of one publication, the runtime among them."""
    read = json.loads(assets.read_text(encoding="utf-8"))
    target = next(t for name, t in read["targets"].items() if "/" in name)
    for key, library in target.items():
        if library["type"] == "package" and any(library.get(kind) for kind in ("runtime", "native", "runtimeTargets")):
            yield tuple(key.split("/"))
    for framework in read["project"]["frameworks"].values():
        for needed in framework.get("downloadDependencies", []):
            name, version = needed["name"], re.search(r"[0-9][^,\]]*", needed["version"]).group().strip()
            if re.match(r"(?i)microsoft\.netcore\.app\.runtime", name):
                yield name, version


def licence_of(folder):
    """The licence a package names, and the texts that come with it."""
    spec = next(folder.glob("*.nuspec")).read_text(encoding="utf-8-sig")
    named = re.search(r'<license type="expression">([^<]+)</license>', spec)
    holders = re.search(r"<copyright>([^<]+)</copyright>", spec) or re.search(r"<authors>([^<]+)</authors>", spec)
    texts = [f for f in sorted(folder.iterdir()) if f.name.lower() in LICENCE_FILES]
    return named.group(1) if named else None, holders.group(1).strip() if holders else "", texts


def main(packages, fonts, *assets):
    found = sorted({p for a in assets for p in packages_of(pathlib.Path(a))}, key=lambda p: (p[0].lower(), p[1]))
    print("Parts of other hands that are inside this program, with their versions and licences.")
    said = set()
    for name, version in found:
        folder = pathlib.Path(packages, name.lower(), version.lower())
        licence, holders, texts = licence_of(folder)
        if licence is None and not texts:
            sys.exit(f"{name} {version} says nothing of its licence")
        print(f"\n{'=' * 100}\n{name} {version}\n{holders}\nLicence: {licence or 'as below'}")
        for text in texts:
            words = text.read_text(encoding="utf-8-sig", errors="replace").replace("\r\n", "\n").strip()
            # The runtime's notices are the same for every system.
            print(f"\n{text.name}, as above" if words in said else f"\n{words}")
            said.add(words)
    for text in sorted(pathlib.Path(fonts).glob("OFL-*.txt")):
        print(f"\n{'=' * 100}\nThe typeface {text.stem[4:]}\n\n{text.read_text(encoding='utf-8').strip()}")


if __name__ == "__main__":
    main(*sys.argv[1:])
