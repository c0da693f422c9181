using NodaTime;
using PaperFlock.Cli.Pictures;
using PaperFlock.Flocks;
using PaperFlock.Flocks.Reading;
using PaperFlock.Layout;
using PaperFlock.Layout.Pages;
using PaperFlock.Pdf;
using PaperFlock.Planning;
using PaperFlock.Sheets;
using PaperFlock.Sheets.Guide;
using PaperFlock.Sheets.Issues;
using PaperFlock.Sheets.TestPage;

namespace PaperFlock.Cli.Wiring;

/// <summary>Joins the rooms: read, plan, compose, print. The only place that knows them all.</summary>
internal sealed class Line : ILine
{
    private const int FontBytes = 100_000;
    private const int PageBytes = 3_000;

    public FlockReading Read(string shownPath, byte[] bytes) => FlockReader.Read(shownPath, bytes);

    public SeasonPlan Plan(Flock flock, LocalDate asOf) => SeasonPlanner.Plan(flock, asOf);

    public Issue Compose(SeasonPlan plan, PackRequest request, IssueRecord? record)
    {
        var composed = PackComposer.Compose(plan, FontLibrary.Measurer, request, record);
        return new Issue(PackBinding.Bind(composed.Pack, plan.Flock, request.Split), composed);
    }

    public PackDocument TestPage(Paper paper) => PackBinding.Leaf(PrinterTest.Compose(paper, FontLibrary.Measurer));

    public PackDocument Guide(Paper paper) => PackBinding.Leaf(UserGuide.Compose(paper, FontLibrary.Measurer));

    public ReadOnlyMemory<byte> Print(PackDocument document)
    {
        // Room for the fonts and for pages as long as they usually are, so that it does not have to grow.
        var pdf = new MemoryStream(FontBytes + (document.Print.Pages.Length * PageBytes));
        PdfPrinter.Print(document.Print, pdf);
        return pdf.GetBuffer().AsMemory(0, (int)pdf.Length);
    }

    public byte[] Paint(Page page, double dotsPerInch) => PngPrinter.Paint(page, dotsPerInch);

    public string? FirstMissing(string text, Face face) => FontLibrary.FirstMissing(text, face);
}
