using PaperFlock.Pdf.Painting;

namespace PaperFlock.Pdf.Writing;

/// <summary>Writes a document with what a PDF says about it. Section and table numbers are those of ISO 32000-1:2008, from memory.</summary>
internal sealed class DocumentWriter
{
    private readonly PrintDocument _document;
    private readonly PdfFile _file;
    private readonly Reference _tree;
    private readonly Reference _resources;
    private readonly ImmutableArray<Reference> _pages;

    public DocumentWriter(PrintDocument document, Stream output)
    {
        (_document, _file) = (document, new PdfFile(output));
        (_tree, _resources) = (_file.Next(), _file.Next());
        _pages = [.. document.Pages.Select(_ => _file.Next())];
    }

    /// <param name="contents">Of each page its content stream, compressed.</param>
    /// <param name="painted">All pages; nothing about them is wrong.</param>
    public void Write(ImmutableArray<byte[]> contents, ContentCanvas painted)
    {
        var links = LinkAnnotations.Write(_file, painted.Links, _pages, _document.Pages);
        var byPage = links.ToLookup(link => link.Page, link => link.Annotation);
        for (var i = 0; i < _pages.Length; i++)
        {
            WritePage(i, contents[i], byPage[i]);
        }

        WriteTree();
        PageResources.Write(_file, _resources, painted.Glyphs);
        var owners = painted.Links.Areas.Select(link => link.Element ?? throw new InvalidOperationException(link.Target));
        _file.Finish(Catalog(new StructureWriter(_file, _pages, links).Write(painted.Tree, owners)), Information());
    }

    private void WritePage(int index, ReadOnlySpan<byte> content, IEnumerable<Reference> annotations)
    {
        var paper = _document.Pages[index].Page.Paper;
        var contents = _file.Next();
        var body = _file.Begin(_pages[index]);
        body.Add($"<</Type/Page/Parent {_tree}/Resources {_resources}/Contents {contents}/StructParents {index}/Tabs/S/MediaBox[0 0 {paper.Width} {paper.Height}]");
        // 14.11.2: nothing bleeds, and all of the paper is the page: cards meet at shared cut lines and reach its edges, and software would crop to a box round one.
        body.Add($"/TrimBox[0 0 {paper.Width} {paper.Height}]/BleedBox[0 0 {paper.Width} {paper.Height}]");
        if (annotations.Any())
        {
            body.Add("/Annots"u8);
            body.AddArray(annotations);
        }

        body.Add(">>"u8);
        _file.End();
        _file.WriteStream(contents, content, Flate.Entry);
    }

    private void WriteTree()
    {
        var body = _file.Begin(_tree);
        body.Add($"<</Type/Pages/Count {_pages.Length}/Kids");
        body.AddArray(_pages);
        body.Add(">>"u8);
        _file.End();
    }

    private Reference Catalog(Reference structure)
    {
        var metadata = Metadata.Write(_file, _document);
        var attached = _document.Attachment is { } attachment ? Attachment.Write(_file, attachment) : (Reference?)null;
        var outlines = _document.Outline.IsEmpty ? (Reference?)null : Outlines.Write(_file, _document.Outline, _pages);
        var catalog = _file.Next();
        var body = _file.Begin(catalog);
        body.Add($"<</Type/Catalog/Pages {_tree}/Metadata {metadata}/MarkInfo<</Marked true>>/StructTreeRoot {structure}/Lang ");
        body.AddText(_document.Language);
        if (attached is { } specification)
        {
            // Associated with the whole of the file (ISO 32000-2, 14.13).
            body.Add($"/AF[{specification} ]/Names<</EmbeddedFiles<</Names[");
            body.AddText(_document.Attachment!.Name);
            body.Add($"{specification} ]>>>>");
        }

        // 12.4.2: a label for each page that is its page code and no number besides, so it has a prefix and no style.
        body.Add("/PageLabels<</Nums["u8);
        foreach (var (index, page) in _document.Pages.Index())
        {
            body.Add($"{index}<</P ");
            body.AddText(page.Label);
            body.Add(">>"u8);
        }

        body.Add("]>>"u8);
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
