namespace PaperFlock.Pdf.Writing;

/// <summary>7.11.4: files inside the file, associated with the whole of it (/AF, ISO 32000-2, 14.13).</summary>
internal static class Attachments
{
    /// <summary>Adds their entries to the catalog.</summary>
    /// <param name="written">Name and file specification of each.</param>
    public static void AddToCatalog(PdfBuffer catalog, IReadOnlyList<(string Name, Reference Specification)> written)
    {
        if (written.Count == 0)
        {
            return;
        }

        catalog.Add("/AF"u8);
        catalog.AddArray(written.Select(attachment => attachment.Specification));
        // 7.9.6: a name tree is sorted by name.
        catalog.Add("/Names<</EmbeddedFiles<</Names["u8);
        foreach (var (name, specification) in written.OrderBy(attachment => attachment.Name, StringComparer.Ordinal))
        {
            catalog.AddText(name);
            catalog.Add($"{specification} ");
        }

        catalog.Add("]>>>>"u8);
    }

    /// <returns>The file specification.</returns>
    public static Reference Write(PdfFile file, PdfAttachment attachment)
    {
        var (specification, content) = (file.Next(), file.Next());
        file.WriteStream(content, Flate.Compress(attachment.Bytes.Span), Entries(NameOf(attachment.MediaType), attachment.Bytes.Length));
        var body = file.Begin(specification);
        body.Add("<</Type/Filespec/F "u8);
        body.AddText(attachment.Name);
        body.Add("/UF "u8);
        body.AddText(attachment.Name);
        body.Add("/Desc "u8);
        body.AddText(attachment.Description);
        body.Add($"/AFRelationship/Data/EF<</F {content}/UF {content}>>>>");
        file.End();
        return specification;
    }

    /// <summary>Of the dictionary of an embedded file's stream, besides its length.</summary>
    /// <param name="subtype">Its media type as a name, without the slash before it.</param>
    /// <param name="size">In bytes before compressing.</param>
    public static string Entries(string subtype, int size) => string.Create(CultureInfo.InvariantCulture, $"/Type/EmbeddedFile/Subtype/{subtype}/Params<</Size {size}>>{Flate.Entry}");

    /// <summary>7.3.5: what is no letter, digit or plain sign is written by its code.</summary>
    private static string NameOf(string mediaType) =>
        string.Concat(mediaType.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '.' or '+' ? c.ToString() : string.Create(CultureInfo.InvariantCulture, $"#{(int)c:X2}")));
}
