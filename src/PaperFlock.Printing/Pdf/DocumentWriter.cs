using System.Collections.Immutable;
using PaperFlock.Printing.Painting;

namespace PaperFlock.Printing.Pdf;

/// <summary>Writes a document with what a PDF says about it. Section and table numbers are those of ISO 32000-1:2008, from memory.</summary>
internal sealed class DocumentWriter
{
    private readonly PrintDocument _document;
    private readonly PdfFile _file;
    private readonly Reference _tree;
    private readonly Reference _resources;
    private readonly ImmutableArray<Reference> _pages;

    private DocumentWriter(PrintDocument document, Stream output)
    {
        (_document, _file) = (document, new PdfFile(output));
        (_tree, _resources) = (_file.Next(), _file.Next());
        _pages = [.. document.Pages.Select(_ => _file.Next())];
    }

    /// <exception cref="InvalidOperationException">A link leads nowhere; nothing has been written yet.</exception>
    public static void Write(PrintDocument document, PaintedPages painted, Stream output)
    {
        var links = painted.Links.Resolve();
        new DocumentWriter(document, output).Write(painted, links);
    }

    private void Write(PaintedPages painted, ImmutableArray<(LinkMap.Link Link, LinkMap.Anchor Anchor)> links)
    {
        var annotations = LinkAnnotations.Write(_file, links, _pages, _document.Pages);
        for (var i = 0; i < _pages.Length; i++)
        {
            WritePage(i, painted.Contents[i], annotations[i]);
        }

        WriteTree();
        PageResources.Write(_file, _resources, painted.Glyphs);
        _file.Finish(Catalog(), Information());
    }

    private void WritePage(int index, ReadOnlySpan<byte> content, IEnumerable<Reference> annotations)
    {
        var paper = _document.Pages[index].Page.Paper;
        var trim = _document.Pages[index].Trim ?? new TrimBox(0, 0, paper.Width, paper.Height);
        var contents = _file.Next();
        var body = _file.Begin(_pages[index]);
        body.Add($"<</Type/Page/Parent {_tree}/Resources {_resources}/Contents {contents}/MediaBox[0 0 {paper.Width} {paper.Height}]");
        // 14.11.2: boxes are measured from the lower left corner. Nothing bleeds, so both are the finished size.
        AddBox("TrimBox");
        AddBox("BleedBox");

        if (annotations.Any())
        {
            body.Add("/Annots"u8);
            body.AddArray(annotations);
        }

        body.Add(">>"u8);
        _file.End();
        _file.WriteStream(contents, content, Flate.Entry);

        void AddBox(string name) => body.Add($"/{name}[{trim.X} {paper.Height - trim.Y - trim.Height} {trim.X + trim.Width} {paper.Height - trim.Y}]");
    }

    private void WriteTree()
    {
        var body = _file.Begin(_tree);
        body.Add($"<</Type/Pages/Count {_pages.Length}/Kids");
        body.AddArray(_pages);
        body.Add(">>"u8);
        _file.End();
    }

    private Reference Catalog()
    {
        var outlines = _document.Outline.IsEmpty ? (Reference?)null : Outlines.Write(_file, _document.Outline, _pages);
        var catalog = _file.Next();
        var body = _file.Begin(catalog);
        body.Add($"<</Type/Catalog/Pages {_tree}/Lang ");
        body.AddText(_document.Language);
        body.Add("/PageLabels"u8);
        PageLabels.Add(body, _document.Pages);
        // 12.2, Table 150. Enforce is from ISO 32000-2; older readers pass over it.
        body.Add($"/ViewerPreferences<</PrintScaling/None/Enforce[/PrintScaling]/Duplex/{Duplex(_document.Duplex)}/PickTrayByPDFSize true/DisplayDocTitle true>>");
        if (outlines is { } first)
        {
            body.Add($"/Outlines {first}/PageMode/UseOutlines");
        }

        body.Add(">>"u8);
        _file.End();
        return catalog;
    }

    // 14.3.3, Table 317, without the dates: they would differ each time the same flock is printed.
    private Reference Information()
    {
        var information = _file.Next();
        var body = _file.Begin(information);
        body.Add("<</Creator(PaperFlock)/Producer(PaperFlock)/Title "u8);
        body.AddText(_document.Title);
        if (_document.Author is { } author)
        {
            body.Add("/Author "u8);
            body.AddText(author);
        }

        body.Add(">>"u8);
        _file.End();
        return information;
    }

    private static string Duplex(DuplexHint hint) => hint switch
    {
        DuplexHint.LongEdge => "DuplexFlipLongEdge",
        DuplexHint.ShortEdge => "DuplexFlipShortEdge",
        _ => "Simplex",
    };
}
