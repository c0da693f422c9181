namespace PaperFlock.Pdf.Writing;

/// <summary>12.3.3: the table of contents beside the page. Every section is seen at first, with what it holds folded away.</summary>
internal static class Outlines
{
    /// <param name="entries">At least one.</param>
    /// <returns>The root.</returns>
    public static Reference Write(PdfFile file, ImmutableArray<OutlineEntry> entries, ImmutableArray<Reference> pages)
    {
        var root = file.Next();
        var (first, last) = WriteChildren(file, root, entries, pages);
        file.Begin(root).Add($"<</Type/Outlines/First {first}/Last {last}/Count {entries.Length}>>");
        file.End();
        return root;
    }

    private static (Reference First, Reference Last) WriteChildren(PdfFile file, Reference parent, ImmutableArray<OutlineEntry> entries, ImmutableArray<Reference> pages)
    {
        ImmutableArray<Reference> items = [.. entries.Select(_ => file.Next())];
        for (var i = 0; i < entries.Length; i++)
        {
            var entry = entries[i];
            var children = entry.Children.IsEmpty ? ((Reference First, Reference Last)?)null : WriteChildren(file, items[i], entry.Children, pages);
            var body = file.Begin(items[i]);
            body.Add($"<</Parent {parent}/Dest[{pages[entry.Page]}/Fit]/Title ");
            body.AddText(entry.Title);
            if (i > 0)
            {
                body.Add($"/Prev {items[i - 1]}");
            }

            if (i + 1 < items.Length)
            {
                body.Add($"/Next {items[i + 1]}");
            }

            if (children is var (first, last))
            {
                // Negative: so many would show if it were unfolded (Table 153).
                body.Add($"/First {first}/Last {last}/Count {-entry.Children.Length}");
            }

            body.Add(">>"u8);
            file.End();
        }

        return (items[0], items[^1]);
    }
}
