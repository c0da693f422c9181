#!/usr/bin/env python3
"""Writes the notices of everything of others that is inside a published program, with versions, licences and their texts.

notices.py PACKAGES FONTS ASSETS...: the folder of restored packages, the folder of fonts, and the project.assets.json of each system
the program was published for. The text of a licence is the package's own, or where it only names one, that in licences/; nothing is
fetched. A package whose licence has no text here ends it with an error.
"""
import json
import pathlib
import re
import sys

LICENCES = pathlib.Path(__file__).parent / "licences"
OWN_LICENCE = ("license", "license.txt", "license.md")
LONG = 3000
OWN_NOTICES = ("third-party-notices.txt", "thirdpartynotices.txt")


def packages_of(assets):
    """Names and versions of all packages of one publication, the runtime and what starts it among them."""
    read = json.loads(assets.read_text(encoding="utf-8"))
    target = next(t for name, t in read["targets"].items() if "/" in name)
    for key, library in target.items():
        if library["type"] == "package" and any(library.get(kind) for kind in ("runtime", "native", "runtimeTargets")):
            yield tuple(key.split("/"))
    for framework in read["project"]["frameworks"].values():
        for needed in framework.get("downloadDependencies", []):
            name, version = needed["name"], re.search(r"[0-9][^,\]]*", needed["version"]).group().strip()
            if re.match(r"(?i)microsoft\.netcore\.app\.(runtime|host)\.", name):
                yield name, version


def said_of(folder, called):
    """What a package says of its licence in a word, who holds the rights, and the texts."""
    spec = next(folder.glob("*.nuspec")).read_text(encoding="utf-8-sig")
    named = re.search(r'<license type="expression">([^<]+)</license>', spec)
    holders = re.search(r"<copyright>([^<]+)</copyright>", spec) or re.search(r"<authors>([^<]+)</authors>", spec)
    holders = holders.group(1).strip()
    if not re.search(r"©|copyright", holders, re.IGNORECASE):
        holders = f"Copyright (c) {holders}"
    files = {f.name.lower(): f for f in sorted(folder.iterdir())}
    own = [words_of(files[name]) for name in OWN_LICENCE if name in files]
    if not own:
        # Of several to choose from, one is enough.
        choices = named.group(1).split(" OR ") if named else []
        own = [words_of(LICENCES / f"{choice}.txt") for choice in choices if (LICENCES / f"{choice}.txt").exists()][:1]
    if not own:
        sys.exit(f"{called} has no text of its licence, and there is none in {LICENCES}")
    notices = [words_of(files[name]) for name in OWN_NOTICES if name in files]
    return named.group(1) if named else "as below", holders, own + notices


def words_of(file):
    return file.read_text(encoding="utf-8-sig", errors="replace").replace("\r\n", "\n").strip("\n").rstrip()


def main(packages, fonts, *assets):
    found = sorted({p for a in assets for p in packages_of(pathlib.Path(a))}, key=lambda p: (p[0].lower(), p[1]))
    print("Parts of other hands that are inside this program, with their versions and licences.")
    said = {}
    for name, version in found:
        called = f"{name} {version}"
        licence, holders, texts = said_of(pathlib.Path(packages, name.lower(), version.lower()), called)
        print(f"\n{'=' * 100}\n{called}\n{holders}\nLicence: {licence}")
        for words in texts:
            # The runtime's notices are the same for every system, and longer than all the rest.
            print(f"\nThe same words as under {said[words]}:\n{words.strip().splitlines()[0]} ..." if len(words) > LONG and words in said else f"\n{words}")
            said.setdefault(words, called)
    for text in sorted(pathlib.Path(fonts).glob("OFL-*.txt")):
        print(f"\n{'=' * 100}\nThe typeface {text.stem[4:]}\n\n{words_of(text)}")


if __name__ == "__main__":
    main(*sys.argv[1:])
