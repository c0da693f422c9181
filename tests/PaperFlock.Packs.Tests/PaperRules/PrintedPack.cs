using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using NodaTime;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Reading;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Pieces;
using PaperFlock.Layout.Structure;
using PaperFlock.Pdf;
using PaperFlock.Pdf.Tests;
using PaperFlock.Planning;
using PaperFlock.Sheets;
using PaperFlock.Sheets.Tests.PaperRules;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;
using UglyToad.PdfPig.Tokens;

namespace PaperFlock.Packs.Tests.PaperRules;

/// <summary>A pack printed to PDF and read back, every page once.</summary>
/// <param name="Sides">Of the pack, then of the planner in one piece, which is a file of its own.</param>
internal sealed record PrintedPack(PackInHand InHand, ImmutableArray<PdfSide> Sides, ImmutableArray<OutlineLine> Outline)
{
    private static readonly ConcurrentDictionary<PrintRun, Lazy<PrintedPack>> Made = new();

    public static PrintedPack HollinBank => Of(new PrintRun("hollin-bank", "A4", true, "long-edge"));

    /// <summary>The same run is made once for all tests.</summary>
    public static PrintedPack Of(PrintRun run) => Made.GetOrAdd(run, p => new Lazy<PrintedPack>(() => Fresh(p))).Value;

    /// <summary>A page by itself, printed and read back without its structure. Its links would lead nowhere and are left out.</summary>
    public static ReadPage ReadAlone(Page page)
    {
        var alone = page with { Content = new Piece(page.Paper, page.Content.Flatten().Items.RemoveAll(i => i is LinkItem)).As(StructureTag.Paragraph) };
        using var pdf = Open(new PrintDocument("A page", null, "en-GB", [new PrintPage(alone, "PAGE")], [], DuplexHint.Simplex));
        return PdfPageReader.Read(pdf, pdf.GetPage(1));
    }

    /// <summary>A whole pack, from what was composed.</summary>
    public static PrintedPack Of(SeasonPlan plan, ComposedPack pack)
    {
        var pages = new List<(ReadPage Page, string Label)>();
        ImmutableArray<OutlineLine> outline = [];
        foreach (var document in PackBinding.Bind(pack, plan.Flock, split: false))
        {
            using var pdf = Open(document.Print);
            var labels = Labels(pdf);
            Assert.Equal(labels.Length, pdf.NumberOfPages);
            pages.AddRange(pdf.GetPages().Select((p, i) => (PdfPageReader.Read(pdf, p), labels[i])));
            outline = outline.IsEmpty ? [.. OutlineOf(pdf)] : outline;
        }

        Assert.Equal(SideInPack.AllSheets(pack).Sum(s => s.Sides.Length), pages.Count);
        var hand = PackInHand.Of(plan, pack, (place, _) => pages[place].Page.Ink);
        return new PrintedPack(hand, [.. hand.Sides.Select((side, i) => new PdfSide(side, pages[i].Page, pages[i].Label))], outline);
    }

    /// <summary>One kind of sheet alone, asked for by name.</summary>
    public static PrintedPack Of(SeasonPlan plan, string kind) => Of(plan, PackComposer.Compose(plan, FontLibrary.Measurer, new PackRequest([kind])));

    private static PrintedPack Fresh(PrintRun run)
    {
        var yaml = run.Vary(File.ReadAllText(Path.Combine(Samples.Root, "flocks", run.Flock + ".yaml")));
        var reading = FlockReader.Read(new SourceText(run.Flock, yaml));
        Assert.True(reading.Flock is not null, string.Join("\n", reading.Diagnostics));
        var plan = SeasonPlanner.Plan(reading.Flock, run.AsOf);
        return Of(plan, PackComposer.Compose(plan, FontLibrary.Measurer, PackRequest.Everything));
    }

    private static PdfDocument Open(PrintDocument document)
    {
        using var output = new MemoryStream();
        PdfPrinter.Print(document, output);
        return PdfDocument.Open(output.ToArray());
    }

    /// <summary>ISO 32000-1, 12.4.2: a prefix without a numbering style is the whole label; the pack gives each page its own.</summary>
    private static string[] Labels(PdfDocument pdf) =>
        [.. Assert.IsType<ArrayToken>(pdf.InCatalog("PageLabels", "Nums")).Data.OfType<DictionaryToken>().Select(label => pdf.Find(label, "P").Text())];

    private static IEnumerable<OutlineLine> OutlineOf(PdfDocument pdf) => pdf.TryGetBookmarks(out var bookmarks)
        ? bookmarks.GetNodes().OfType<DocumentBookmarkNode>().Select(n => new OutlineLine(n.Level, n.Title, n.PageNumber - 1))
        : [];
}

/// <param name="Page">From 0.</param>
internal sealed record OutlineLine(int Level, string Title, int Page)
{
    public bool Names(string code) => Title.StartsWith(code + " ", StringComparison.Ordinal);
}

/// <summary>A sample flock and how it is printed.</summary>
/// <param name="Paper">A4 or Letter; the planner is twice as large.</param>
internal sealed record PrintRun(string Flock, string Paper, bool Gloves, string Duplex)
{
    public LocalDate AsOf => Flock == "hollin-bank" ? new LocalDate(2026, 11, 25) : new LocalDate(2027, 6, 20);

    public string Vary(string yaml)
    {
        var planner = Paper == "A4" ? "A3" : "Tabloid";
        foreach (var (key, value) in new[] { ("paper", Paper), ("planner", planner), ("gloves", Gloves ? "true" : "false"), ("duplex", Duplex) })
        {
            var line = new Regex($"^  {key}: [^ \n]+", RegexOptions.Multiline);
            Assert.Single(line.Matches(yaml));
            yaml = line.Replace(yaml, $"  {key}: {value}");
        }

        return yaml;
    }
}
