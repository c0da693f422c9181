using PaperFlock.Pdf.Painting;

namespace PaperFlock.Pdf.Writing;

/// <summary>What the content of a page calls by name (7.8.3). All pages share one dictionary of it.</summary>
internal static class PageResources
{
    /// <summary>The graphics state every page begins with.</summary>
    public const string State = "Ink";

    public static string Font(Face face) => face switch
    {
        Face.Text => "T",
        Face.TextBold => "TB",
        Face.Mono => "M",
        Face.MonoBold => "MB",
        _ => throw new ArgumentOutOfRangeException(nameof(face), face, null),
    };

    /// <summary>Writes the fonts that are used, and the dictionary under the number given.</summary>
    public static void Write(PdfFile file, Reference number, GlyphUse used)
    {
        var fonts = Enum.GetValues<Face>().Where(face => used.Of(face).Count > 0).Select(face => (Name: Font(face), Font: FontObjects.Write(file, FontLibrary.Of(face), used.Of(face)))).ToList();
        var body = file.Begin(number);
        // Table 58: lines of one width look alike however coarse the printer (SA); corners sharper than 29 degrees are cut off (ML).
        body.Add($"<</ExtGState<</{State}<</SA true/ML 4/LC 0>>>>/Font<<");
        foreach (var (name, font) in fonts)
        {
            body.Add($"/{name} {font}");
        }

        body.Add(">>>>"u8);
        file.End();
    }
}
