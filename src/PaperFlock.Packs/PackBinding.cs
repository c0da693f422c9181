using PaperFlock.Layout.Pages;

namespace PaperFlock.Packs;

/// <summary>Binds composed sheets into documents to print.</summary>
internal static class PackBinding
{
    /// <summary>Follows the name of the planner on larger paper, which is a file of its own.</summary>
    public const string PlannerSuffix = "-wall";

    /// <param name="split">A document for each way of printing instead of one for all that the printer's paper holds.</param>
    public static ImmutableArray<PackDocument> Bind(ComposedPack pack, Flock flock, bool split)
    {
        var documents = ImmutableArray.CreateBuilder<PackDocument>();
        var set = pack.Set.Length == 0 ? string.Empty : $"-{PackFileNames.Safe(pack.Set)}";
        var printer = Hint(flock.Print.Duplex);
        if (split)
        {
            foreach (var way in PrintWay.All)
            {
                AddWay(way, [.. pack.Sheets.Where(way.Holds)]);
            }
        }
        else
        {
            Add(set, pack.Title, pack.Sheets, printer);
        }

        if (pack.WholePlanner is { } planner)
        {
            Add(set + PlannerSuffix, $"{pack.Title}: {planner.Title}", [planner], DuplexHint.Simplex);
        }

        return documents.ToImmutable();

        // Cards go through a printer that prints one side twice: all the fronts, then all the backs on them.
        void AddWay(PrintWay way, ImmutableArray<Sheet> sheets)
        {
            var (suffix, title) = ($"{set}-{way.Name}", $"{pack.Title}: {way.Name}");
            if (way.TwoPasses && printer == DuplexHint.Simplex)
            {
                Add($"{suffix}-fronts", $"{title}, fronts", OneFace(sheets, PageSide.Front), printer);
                Add($"{suffix}-backs", $"{title}, backs", OneFace(sheets, PageSide.Back), printer);
            }
            else
            {
                Add(suffix, title, sheets, way.BothSides ? printer : DuplexHint.Simplex);
            }
        }

        void Add(string suffix, string title, ImmutableArray<Sheet> sheets, DuplexHint duplex)
        {
            if (!sheets.IsEmpty)
            {
                documents.Add(Document(suffix, title, flock.Holding.Name, sheets, duplex));
            }
        }
    }

    /// <summary>A leaf that belongs to no flock, to be printed on both sides.</summary>
    public static PackDocument Leaf(Sheet sheet) => Document(string.Empty, sheet.Title, null, [sheet], DuplexHint.LongEdge);

    private static ImmutableArray<Sheet> OneFace(ImmutableArray<Sheet> sheets, PageSide face) =>
        [.. sheets.Select(s => s with { Sides = s.Sides.RemoveAll(side => side.Page.Side != face) })];

    private static PackDocument Document(string suffix, string title, string? author, ImmutableArray<Sheet> sheets, DuplexHint duplex)
    {
        // A blank back keeps the next sheet off it. On one side there is no such back, and the page would be a wasted leaf.
        var bound = duplex == DuplexHint.Simplex
            ? [.. sheets.Select(s => s with { Sides = s.Sides.RemoveAll(side => side.IsBlank) })]
            : sheets;
        var pages = bound.SelectMany(s => s.Sides.Select(side => new PrintPage(side.Page, side.Label)));
        var uses = bound.SelectMany(s => s.Sides.Select(_ => s.Use));
        var print = new PrintDocument(title, author, "en-GB", [.. pages], PackOutline.Of(bound), duplex);
        return new PackDocument(suffix, print, [.. uses]);
    }

    private static DuplexHint Hint(Duplex duplex) => duplex switch
    {
        Duplex.LongEdge => DuplexHint.LongEdge,
        Duplex.ShortEdge => DuplexHint.ShortEdge,
        Duplex.SingleSided => DuplexHint.Simplex,
        _ => throw new ArgumentOutOfRangeException(nameof(duplex)),
    };
}
