namespace PaperFlock.Pdf.Writing;

/// <summary>7.11.4: a file inside the file.</summary>
internal static class Attachment
{
    /// <summary>What the specification of a file of that name begins with.</summary>
    public static PdfBuffer Begin(string name)
    {
        var specification = new PdfBuffer();
        specification.Add("<</Type/Filespec/F "u8);
        specification.AddText(name);
        specification.Add("/UF "u8);
        specification.AddText(name);
        return specification;
    }

    /// <returns>The file specification.</returns>
    public static Reference Write(PdfFile file, PdfAttachment attachment)
    {
        var (specification, content) = (file.Next(), file.Next());
        file.WriteStream(content, Flate.Compress(attachment.Bytes.Span), string.Create(
            CultureInfo.InvariantCulture,
            $"/Type/EmbeddedFile/Subtype/{NameOf(attachment.MediaType)}/Params<</Size {attachment.Bytes.Length}>>{Flate.Entry}"));
        var body = file.Begin(specification);
        body.Add(Begin(attachment.Name).Written);
        body.Add("/Desc "u8);
        body.AddText(attachment.Description);
        body.Add($"/AFRelationship/Data/EF<</F {content}/UF {content}>>>>");
        file.End();
        return specification;
    }

    /// <summary>7.3.5: what is no letter, digit or plain sign is written by its code.</summary>
    private static string NameOf(string mediaType) =>
        string.Concat(mediaType.Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '.' or '+' ? c.ToString() : string.Create(CultureInfo.InvariantCulture, $"#{(int)c:X2}")));
}
