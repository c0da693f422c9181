#!/usr/bin/python3
"""Holds the tags of a PDF against the page content, with pikepdf (Debian: python3-pikepdf).

    check-tags.py FILE.pdf...             a line for each fault; exit status 1 if there is any
    check-tags.py --spoil FILE.pdf        spoils the file in a number of ways and sees that each is noticed

Clauses are those of ISO 32000-1:2008 and ISO 14289-1:2014. What it asks:
all that is painted is marked as content or artifact, and marks nest (14.6); each piece of content has one element, which the
parent tree names too (14.7.4); elements stand where they may (14.8.4); tables are even and their headers have a scope
(14289-1, 7.5); figures and links have words (7.3, 7.18.5); headings skip no level (7.4.2); fonts are embedded and say
which characters they show (7.21); the file has a title, a language, and says that it is PDF/UA-1 (5, 7.1, 7.2).
"""
import io
import sys

import pikepdf
from pikepdf import Array, Dictionary, Name

PAINTING = {"f", "F", "f*", "B", "B*", "b", "b*", "S", "s", "sh", "Do", "EI", "Tj", "TJ", "'", '"'}
GROUPS = {"Document", "Sect", "Table", "TR", "L", "LI"}
CONTENT = {"P", "H1", "H2", "H3", "H4", "H5", "H6", "Lbl", "LBody", "TH", "TD", "Figure", "Link"}
ONLY_IN = {"TR": {"Table"}, "TH": {"TR"}, "TD": {"TR"}, "LI": {"L"}, "Lbl": {"LI"}, "LBody": {"LI"}}
HOLD_ONLY = {"Table": {"TR"}, "TR": {"TH", "TD"}, "L": {"LI"}, "LI": {"Lbl", "LBody"}}


class Checker:
    def __init__(self, pdf):
        self.pdf = pdf
        self.faults = []
        self.pages = {page.obj.objgen: i for i, page in enumerate(pdf.pages)}
        self.owners = {}
        self.links = {}
        self.level = 0
        self.parents = {}

    def fault(self, *words):
        self.faults.append(" ".join(str(word) for word in words))

    def run(self):
        self.check_catalog()
        root = self.pdf.Root.get("/StructTreeRoot")
        if root is None:
            self.fault("no structure tree")
            return self.faults
        self.read_parents(root.ParentTree)
        top = root.K
        for element in top if isinstance(top, Array) else [top]:
            self.walk(element, root, "")
        for number, page in enumerate(self.pdf.pages):
            self.check_page(number, page)
        self.check_fonts()
        self.check_attachments()
        return self.faults

    def check_catalog(self):
        root = self.pdf.Root
        if not root.get("/MarkInfo", {}).get("/Marked"):
            self.fault("not marked")
        if not str(root.get("/Lang", "")).strip():
            self.fault("no language")
        if not root.get("/ViewerPreferences", {}).get("/DisplayDocTitle"):
            self.fault("the title is not what a window is called by")
        if "/Metadata" not in root:
            self.fault("no metadata")
            return
        with self.pdf.open_metadata(set_pikepdf_as_editor=False, update_docinfo=False) as metadata:
            if metadata.get("{http://www.aiim.org/pdfua/ns/id/}part") != "1":
                self.fault("does not say that it is PDF/UA-1")
            if not metadata.get("dc:title"):
                self.fault("no title")

    def read_parents(self, node):
        entries = list(node.get("/Nums", []))
        for key, value in zip(entries[::2], entries[1::2]):
            self.parents[int(key)] = value
        for kid in node.get("/Kids", []):
            self.read_parents(kid)

    # ---- the tree ----

    def walk(self, element, parent, parent_type):
        kind = str(element.S)[1:]
        if element.P.objgen != parent.objgen:
            self.fault(kind, element.objgen, "does not name what it is in")
        if kind not in GROUPS | CONTENT:
            self.fault("unknown type", kind)
        if parent_type not in ONLY_IN.get(kind, {parent_type}) or kind not in HOLD_ONLY.get(parent_type, {kind}):
            self.fault(kind, "in", parent_type)
        if kind == "Figure" and not str(element.get("/Alt", "")).strip():
            self.fault("a figure without words", element.objgen)
        if kind == "TH" and self.attribute(element, "/Scope") not in ("/Column", "/Row"):
            self.fault("a header cell without scope", element.objgen)
        if kind[0] == "H" and kind[1:].isdigit():
            if int(kind[1:]) > self.level + 1:
                self.fault(kind, "follows", f"H{self.level}")
            self.level = int(kind[1:])
        if kind == "Table":
            widths = {sum(int(self.attribute(cell, "/ColSpan") or 1) for cell in self.elements(row)) for row in self.elements(element)}
            if len(widths) > 1:
                self.fault("a table with rows of", sorted(widths), "columns")
        for kid in self.kids(element):
            self.take(kid, element, kind)

    def take(self, kid, element, kind):
        if isinstance(kid, int):
            self.own(element.Pg, kid, element, kind)
        elif kid.get("/Type") == Name.MCR:
            self.own(kid.get("/Pg") or element.Pg, int(kid.MCID), element, kind)
        elif kid.get("/Type") == Name.OBJR:
            if kind != "Link":
                self.fault("an annotation in", kind)
            self.links[kid.Obj.objgen] = element.objgen
        else:
            self.walk(kid, element, kind)

    def own(self, page, number, element, kind):
        if kind not in CONTENT:
            self.fault("content in", kind)
        self.owners.setdefault((self.pages[page.objgen], number), []).append(element.objgen)

    @staticmethod
    def kids(element):
        if "/K" not in element:
            return []
        return list(element.K) if isinstance(element.K, Array) else [element.K]

    @staticmethod
    def elements(element):
        return [kid for kid in Checker.kids(element) if isinstance(kid, Dictionary) and "/S" in kid]

    @staticmethod
    def attribute(element, key):
        held = element.get("/A", [])
        for attributes in held if isinstance(held, Array) else [held]:
            if key in attributes:
                return str(attributes[key])
        return None

    # ---- the pages ----

    def check_page(self, number, page):
        where = f"page {number + 1}:"
        used = set()
        open_marks = []
        in_text = False
        for operands, operator in pikepdf.parse_content_stream(page):
            operator = str(operator)
            if operator == "BT":
                in_text = True
            elif operator == "ET":
                in_text = False
            elif operator in ("BMC", "BDC"):
                properties = operands[1] if operator == "BDC" and isinstance(operands[1], Dictionary) else {}
                content = int(properties["/MCID"]) if "/MCID" in properties else None
                if content is not None:
                    if any(mark[0] for mark in open_marks):
                        self.fault(where, "content", content, "inside other content or an artifact")
                    if content in used:
                        self.fault(where, "content", content, "twice")
                    used.add(content)
                    self.check_owner(where, number, page, content)
                open_marks.append((content is not None or operands[0] == Name.Artifact, in_text))
            elif operator == "EMC":
                if not open_marks:
                    self.fault(where, "a mark ends that never began")
                elif open_marks.pop()[1] != in_text:
                    self.fault(where, "marks and text objects do not nest")
            elif operator in PAINTING and not any(mark[0] for mark in open_marks):
                self.fault(where, operator, "paints what is neither content nor artifact")
        if open_marks:
            self.fault(where, "a mark does not end")
        for owned in self.owners:
            if owned[0] == number and owned[1] not in used:
                self.fault(where, "content", owned[1], "is in the tree and not on the page")
        self.check_annotations(where, page)

    def check_owner(self, where, number, page, content):
        owners = self.owners.get((number, content), [])
        if len(owners) != 1:
            self.fault(where, "content", content, "belongs to", len(owners), "elements")
            return
        listed = self.parents.get(int(page.obj.get("/StructParents", -1)), [])
        if content >= len(listed) or listed[content].objgen != owners[0]:
            self.fault(where, "the parent tree has another element for content", content)

    def check_annotations(self, where, page):
        for annotation in page.obj.get("/Annots", []):
            if page.obj.get("/Tabs") != Name.S:
                self.fault(where, "not gone through in the order of the tree")
            if not str(annotation.get("/Contents", "")).strip():
                self.fault(where, "a link without words")
            owner = self.links.get(annotation.objgen)
            parent = self.parents.get(int(annotation.get("/StructParent", -1)))
            if owner is None or parent is None or parent.objgen != owner:
                self.fault(where, "a link that is not in the tree")

    # ---- the rest ----

    def check_fonts(self):
        fonts = {}
        for page in self.pdf.pages:
            fonts.update({font.objgen: font for _, font in page.resources.get("/Font", {}).items()})
        for font in fonts.values():
            described = font.DescendantFonts[0] if "/DescendantFonts" in font else font
            if not any(key in described.FontDescriptor for key in ("/FontFile", "/FontFile2", "/FontFile3")):
                self.fault("not embedded:", font.BaseFont)
            if "/ToUnicode" not in font:
                self.fault("does not say which characters it shows:", font.BaseFont)

    def check_attachments(self):
        for name, attached in self.pdf.attachments.items():
            if "/UF" not in attached.obj or "/AFRelationship" not in attached.obj or not str(attached.obj.get("/Desc", "")):
                self.fault("an attachment that does not say what it is:", name)


# ---- spoiling ----


def in_first(pdf, kind, change):
    """Changes the first element of that type."""
    pending = [pdf.Root.StructTreeRoot.K]
    while pending:
        element = pending.pop(0)
        if str(element.S)[1:] == kind:
            change(element)
            return
        pending.extend(Checker.elements(element))
    raise SystemExit(f"the file has no {kind} to spoil")


def delete(*keys):
    def change(element):
        for key in keys:
            del element[key]

    return change


def change_content(old, new):
    def change(pdf):
        content = pdf.pages[0].Contents
        assert old in content.read_bytes(), old
        content.write(content.read_bytes().replace(old, new, 1))

    return change


def set_name(kind, name):
    return lambda pdf: in_first(pdf, kind, lambda element: element.__setitem__("/S", Name("/" + name)))


def first_font(pdf):
    return next(font for _, font in pdf.pages[0].resources.Font.items())


SPOILS = {
    "no language": lambda pdf: delete("/Lang")(pdf.Root),
    "not marked": lambda pdf: delete("/MarkInfo")(pdf.Root),
    "no metadata": lambda pdf: delete("/Metadata")(pdf.Root),
    "no structure tree": lambda pdf: delete("/StructTreeRoot")(pdf.Root),
    "window is called by": lambda pdf: delete("/ViewerPreferences")(pdf.Root),
    "is in the tree and not on the page": change_content(b"MCID 0>>", b"MCID 999>>"),
    "twice": change_content(b"MCID 1>>", b"MCID 0>>"),
    "neither content nor artifact": change_content(b"/Artifact<<", b"/Other<<"),
    "does not end": change_content(b"EMC\n", b""),
    "never began": change_content(b"EMC\n", b"EMC\nEMC\n"),
    "do not nest": change_content(b"ET\nEMC\n", b"EMC\nET\n"),
    "has another element": lambda pdf: pdf.Root.StructTreeRoot.ParentTree.Nums[1].__setitem__(0, pdf.Root.StructTreeRoot.K),
    "header cell without scope": lambda pdf: in_first(pdf, "TH", delete("/A")),
    "unknown type": set_name("P", "Paragraph"),
    "TD in Table": set_name("TR", "TD"),
    "content in": set_name("P", "Sect"),
    "columns": lambda pdf: in_first(pdf, "TR", lambda row: delete(-1)(row.K)),
    "does not name what it is in": lambda pdf: in_first(pdf, "P", lambda element: element.__setitem__("/P", pdf.Root.StructTreeRoot)),
    "belongs to 0 elements": lambda pdf: in_first(pdf, "P", delete("/K")),
    "H6 follows": set_name("P", "H6"),
    "not embedded": lambda pdf: delete("/FontFile2")(first_font(pdf).DescendantFonts[0].FontDescriptor),
    "which characters": lambda pdf: delete("/ToUnicode")(first_font(pdf)),
    "link without words": lambda pdf: [delete("/Contents")(a) for page in pdf.pages for a in page.obj.get("/Annots", [])],
    "not in the tree": lambda pdf: [delete("/StructParent")(a) for page in pdf.pages for a in page.obj.get("/Annots", [])],
    "order of the tree": lambda pdf: [delete("/Tabs")(page.obj) for page in pdf.pages],
}


def spoil(path):
    missed = 0
    with open(path, "rb") as file:
        whole = file.read()
    for expected, change in SPOILS.items():
        with pikepdf.open(io.BytesIO(whole)) as pdf:
            change(pdf)
            found = Checker(pdf).run()
        if not any(expected in fault for fault in found):
            print(f"not noticed: {expected}; found {found[:3]}")
            missed += 1
    print(f"{len(SPOILS) - missed} of {len(SPOILS)} noticed")
    return missed


def main(arguments):
    if arguments[:1] == ["--spoil"]:
        return spoil(arguments[1]) > 0
    bad = 0
    for path in arguments:
        with pikepdf.open(path) as pdf:
            faults = Checker(pdf).run()
        bad += len(faults)
        for fault in faults[:20]:
            print(f"{path}: {fault}")
        if len(faults) > 20:
            print(f"{path}: and {len(faults) - 20} more")
    return bad > 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
