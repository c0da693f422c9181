using System.Collections.Immutable;
using PaperFlock.Flocks;
using PaperFlock.Printing;
using PaperFlock.Sheets;

namespace PaperFlock.Cli.Wiring;

/// <summary>Binds composed sheets into documents to print.</summary>
internal static class PackBinding
{
    /// <summary>Follows the name of the planner in one piece, which needs larger paper and so a file of its own.</summary>
    public const string PlannerSuffix = "-wall";

    /// <summary>The sheets speak British English whatever the holding's country.</summary>
    private const string Language = "en-GB";

    public static Pack Bind(ComposedPack pack, Flock flock)
    {
        var documents = ImmutableArray.CreateBuilder<PackDocument>();
        if (!pack.Sheets.IsEmpty)
        {
            documents.Add(Document(string.Empty, pack.Title, pack.Sheets, flock, Hint(flock.Print.Duplex)));
        }

        if (pack.WholePlanner is { } planner)
        {
            documents.Add(Document(PlannerSuffix, $"{pack.Title}: {planner.Title}", [planner], flock, DuplexHint.Simplex));
        }

        return new Pack(documents.ToImmutable());
    }

    private static PackDocument Document(string suffix, string title, ImmutableArray<Sheet> sheets, Flock flock, DuplexHint duplex)
    {
        var pages = sheets.SelectMany(s => s.Sides.Select(side => new PrintPage(side.Page, side.Label)));
        var uses = sheets.SelectMany(s => s.Sides.Select(_ => s.Use));
        var print = new PrintDocument(title, flock.Holding.Keeper, Language, [.. pages], Outline(sheets), duplex);
        return new PackDocument(suffix, print, [.. uses]);
    }

    /// <summary>An entry for each sheet, and below it one for each side that holds several things.</summary>
    private static ImmutableArray<OutlineEntry> Outline(ImmutableArray<Sheet> sheets)
    {
        var entries = ImmutableArray.CreateBuilder<OutlineEntry>();
        var page = 0;
        foreach (var sheet in sheets)
        {
            var first = page;
            var sides = sheet.Sides
                .Select((side, i) => (side.Contents, Page: first + i))
                .Where(s => !s.Contents.IsEmpty)
                .Select(s => new OutlineEntry(string.Join(", ", s.Contents), s.Page, []));
            entries.Add(new OutlineEntry($"{sheet.Code} {sheet.Title}", first, [.. sides]));
            page += sheet.Sides.Length;
        }

        return entries.ToImmutable();
    }

    private static DuplexHint Hint(Duplex duplex) => duplex switch
    {
        Duplex.LongEdge => DuplexHint.LongEdge,
        Duplex.ShortEdge => DuplexHint.ShortEdge,
        Duplex.SingleSided => DuplexHint.Simplex,
        _ => throw new ArgumentOutOfRangeException(nameof(duplex)),
    };
}
