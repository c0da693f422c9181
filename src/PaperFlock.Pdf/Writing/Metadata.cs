using System.Security;

namespace PaperFlock.Pdf.Writing;

/// <summary>14.3.2: what the file says of itself, as XMP (ISO 16684-1). That it is PDF/UA-1 is said here (ISO 14289-1, 5).</summary>
internal static class Metadata
{
    /// <summary>Stands before the title and nowhere else.</summary>
    public static ReadOnlySpan<byte> BeforeTitle => "<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">"u8;

    public static Reference Write(PdfFile file, PrintDocument document)
    {
        var author = document.Author is { } name ? $"<dc:creator><rdf:Seq><rdf:li>{SecurityElement.Escape(name)}</rdf:li></rdf:Seq></dc:creator>\n" : "";
        var packet = $"""
            <?xpacket begin="{'\uFEFF'}" id="W5M0MpCehiHzreSzNTczkc9d"?>
            <x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
            <pdfuaid:part>1</pdfuaid:part>
            <dc:title><rdf:Alt><rdf:li xml:lang="x-default">{SecurityElement.Escape(document.Title)}</rdf:li></rdf:Alt></dc:title>
            {author}<pdf:Producer>PaperFlock</pdf:Producer><xmp:CreatorTool>PaperFlock</xmp:CreatorTool>
            </rdf:Description></rdf:RDF></x:xmpmeta>
            <?xpacket end="r"?>
            """;
        var number = file.Next();
        // Not compressed, so that a program that knows no PDF finds it (14.3.2).
        file.WriteStream(number, Encoding.UTF8.GetBytes(packet.ReplaceLineEndings("\n")), "/Type/Metadata/Subtype/XML");
        return number;
    }
}
