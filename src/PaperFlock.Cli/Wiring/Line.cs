using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Layout;
using PaperFlock.Layout.Pages;
using PaperFlock.Planning;
using PaperFlock.Printing;

namespace PaperFlock.Cli.Wiring;

/// <summary>Joins the rooms: read, plan, compose, print. The only place that knows them all.</summary>
internal sealed class Line : ILine
{
    public Reading Read(string shownPath, byte[] bytes) => throw new NotSupportedException($"{shownPath} {bytes.Length}");

    public SeasonPlan Plan(Flock flock, LocalDate asOf) => SeasonPlanner.Plan(flock, asOf);

    public Pack Compose(SeasonPlan plan, IReadOnlyList<SheetName> sheets) => throw new NotSupportedException($"{plan.AsOf} {sheets.Count}");

    public void Print(PackDocument document, Stream output) => PdfPrinter.Print(document.Print, output);

    public byte[] Paint(Page page, double dotsPerInch) => PngPrinter.Paint(page, dotsPerInch);

    public string? FirstMissing(string text, Face face) => FontLibrary.FirstMissing(text, face);
}
