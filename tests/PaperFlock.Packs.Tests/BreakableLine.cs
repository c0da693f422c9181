using NodaTime;
using PaperFlock.Cli.Wiring;
using PaperFlock.Flocks;
using PaperFlock.Flocks.Reading;
using PaperFlock.Layout;
using PaperFlock.Layout.Pages;
using PaperFlock.Planning;
using PaperFlock.Sheets;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Packs.Tests;

/// <summary>The real line, with a place before each step to put a spanner in.</summary>
internal sealed class BreakableLine : ILine
{
    private readonly Line _real = new();

    public Action BeforePlan { get; init; } = () => { };

    public Action BeforeCompose { get; init; } = () => { };

    /// <summary>Given the document about to be printed.</summary>
    public Action<PackDocument> BeforePrint { get; init; } = _ => { };

    public FlockReading Read(string shownPath, byte[] bytes) => _real.Read(shownPath, bytes);

    public SeasonPlan Plan(Flock flock, LocalDate asOf)
    {
        BeforePlan();
        return _real.Plan(flock, asOf);
    }

    public Issue Compose(SeasonPlan plan, PackRequest request, IssueRecord? record)
    {
        BeforeCompose();
        return _real.Compose(plan, request, record);
    }

    public PackDocument TestPage(Paper paper) => _real.TestPage(paper);

    public PackDocument Guide(Paper paper) => _real.Guide(paper);

    public ReadOnlyMemory<byte> Print(PackDocument document)
    {
        BeforePrint(document);
        return _real.Print(document);
    }

    public byte[] Paint(Page page, double dotsPerInch) => _real.Paint(page, dotsPerInch);

    public string? FirstMissing(string text, Face face) => _real.FirstMissing(text, face);
}
