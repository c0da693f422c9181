using PaperFlock.Pdf.Structure;

namespace PaperFlock.Pdf.Writing;

/// <summary>14.7: the objects of a structure tree, and the way back to them from what is painted.</summary>
/// <param name="links">The annotation of each link of the document, and its 0-based page.</param>
internal sealed class StructureWriter(PdfFile file, ImmutableArray<Reference> pages, ImmutableArray<(Reference Annotation, int Page)> links)
{
    /// <param name="owners">The element of each link.</param>
    /// <returns>The root.</returns>
    public Reference Write(StructureTree tree, IEnumerable<StructureElement> owners)
    {
        var root = file.Next();
        // Parents come before what is in them, as their numbers do.
        var elements = tree.Document.All.ToList();
        elements.ForEach(element => element.Number = file.Next());
        elements.ForEach(element => WriteElement(element, element.Parent?.Number ?? root));

        var parents = WriteParents(tree, owners);
        file.Begin(root).Add($"<</Type/StructTreeRoot/K {tree.Document.Number}/ParentTree {parents}/ParentTreeNextKey {pages.Length + links.Length}>>");
        file.End();
        return root;
    }

    /// <summary>The key in the tree of parents by which a link finds its element: they follow those of the pages.</summary>
    public static int KeyOfLink(int index, int pages) => pages + index;

    private void WriteElement(StructureElement element, Reference parent)
    {
        var body = file.Begin(element.Number);
        body.Add($"<</S/{element.Type}/P {parent}");
        AddAttributes(body, element);
        AddKids(body, element);
        body.Add(">>"u8);
        file.EndPacked();
    }

    /// <summary>14.8.5.</summary>
    private static void AddAttributes(PdfBuffer body, StructureElement element)
    {
        if (element.Tag is not { } tag)
        {
            return;
        }

        if (element is FigureElement { Box: var box })
        {
            body.Add("/Alt "u8);
            body.AddText(tag.Says!);
            body.Add($"/A<</O/Layout/BBox[{box.X} {box.Y} {box.Right} {box.Bottom}]>>");
        }

        if (tag.Scope is not null || tag.Columns > 1)
        {
            body.Add("/A<</O/Table"u8);
            body.Add(tag.Scope switch
            {
                HeaderScope.Column => "/Scope/Column"u8,
                HeaderScope.Row => "/Scope/Row"u8,
                _ => ""u8,
            });
            if (tag.Columns > 1)
            {
                body.Add($"/ColSpan {tag.Columns}");
            }

            body.Add(">>"u8);
        }
    }

    private void AddKids(PdfBuffer body, StructureElement element)
    {
        if (element.Kids.Count == 0)
        {
            return;
        }

        var page = (element.Kids.Find(kid => kid is StructureKid.Content) as StructureKid.Content)?.Page;
        if (page is { } usual)
        {
            body.Add($"/Pg {pages[usual]}");
        }

        body.Add("/K["u8);
        foreach (var kid in element.Kids)
        {
            switch (kid)
            {
                case StructureKid.Content content when content.Page == page:
                    body.Add($"{content.Number} ");
                    break;
                case StructureKid.Content content:
                    body.Add($"<</Type/MCR/Pg {pages[content.Page]}/MCID {content.Number}>>");
                    break;
                case StructureKid.Annotation annotation:
                    body.Add($"<</Type/OBJR/Obj {links[annotation.Index].Annotation}/Pg {pages[links[annotation.Index].Page]}>>");
                    break;
                case StructureElement inner:
                    body.Add($"{inner.Number} ");
                    break;
            }
        }

        body.Add("]"u8);
    }

    private Reference WriteParents(StructureTree tree, IEnumerable<StructureElement> owners)
    {
        var number = file.Next();
        var body = file.Begin(number);
        body.Add("<</Nums["u8);
        for (var page = 0; page < pages.Length; page++)
        {
            body.Add($"{page}");
            body.AddArray(tree.Contents[page].Select(element => element.Number));
        }

        foreach (var (index, owner) in owners.Index())
        {
            body.Add($"{KeyOfLink(index, pages.Length)} {owner.Number} ");
        }

        body.Add("]>>"u8);
        file.EndPacked();
        return number;
    }
}
