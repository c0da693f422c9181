namespace PaperFlock.Sheets.Handover;

/// <summary>What to do when something is not as it should be, whom to watch, and where things are.</summary>
/// <remarks>Two hours to the first suck: Vet Times 2018. The keeper within the hour for a ewe off one feed: common practice, no source.</remarks>
internal static class HandoverNotes
{
    /// <summary>More names than this are on the roll and not here.</summary>
    private const int MostNamed = 8;

    public static ImmutableArray<Element> Of(SheetContext context, StayPart part, bool isFirst)
    {
        var keeper = People.Keeper(context.Flock);
        var holding = context.Flock.Holding;
        ImmutableArray<Element> always =
        [
            Said("On her back?", $"Roll her onto her feet, hold her till she stands. Down again: the vet, now; else {keeper}."),
            Said("One missing?", $"Feed the others, then find her before you leave. Down and will not rise: the vet, then {keeper}. Not found: {keeper}. One too many: one ewe’s row on top."),
            Said("Off one feed, or apart?", $"Ring {keeper} within the hour; dull, head low: the vet, now.{(holding.SickPen is { } pen ? $" Sick pen: {char.ToLowerInvariant(pen[0])}{pen[1..]}." : "")}"),
            .. part.Companies.Any(c => c.Ewes.Any(e => e.IsCarrying)) ? [Lambed(context, part, keeper)] : Array.Empty<Element>(),
            .. Watch(context, part),
        ];
        return !isFirst ? always :
        [
            .. always,
            Said("Where it is:", Block.Sentences([holding.Find is { } find ? $"{find.TrimEnd('.')}." : "Bins, tap, hay, hurdles, scales: ____________________________________.", .. Stores(context.Flock.Feeds), .. Chalked(part), .. RoundsOfDay.Move(context.Plan, part) ? ["Times: see the log."] : Array.Empty<string>()])),
        ];
    }

    /// <summary>What stands in which bin, and how much forage is given where it is not all they will eat, is no figure of the plan.</summary>
    private static IEnumerable<string> Stores(Feeds feeds)
    {
        if (!feeds.ForageOnly)
        {
            yield return $"{feeds.Concentrate.Name} in bin\u00a0____.";
        }

        var forage = FeedText.Forage(feeds.Forage.Kind);
        yield return feeds.Forage.AdLib ? $"Never out of {forage.ToLowerInvariant()}." : $"{forage} a day:\u00a0______.";
    }

    /// <summary>Where ewes of one place are parted at the trough nobody can tell which trough is whose, unless the name of its block stands on it.</summary>
    private static IEnumerable<string> Chalked(StayPart part) =>
        part.Companies.Where(c => c.Chart is not null).GroupBy(c => c.Place).Any(g => g.Count() > 1) ? ["Troughs are chalked."] : [];

    private static Text Lambed(SheetContext context, StayPart part, string keeper)
    {
        var first = May(context, part).Select(e => e.Due!.Earliest).DefaultIfEmpty(part.To.PlusDays(1)).Min();
        var early = first > part.To ? "In these days that is early: the vet, now." : "Before her first day overleaf: the vet, now.";
        return Said(
            "One has lambed?",
            $"{early} Lambs weak, or not sucking in 2 hours: the vet, now. {(context.Flock.Housing.Lambing == LambingPlace.Indoors ? "Into a pen with her lambs, hay, water; t" : "T")}ell {keeper} the same day. Feed: the table overleaf.");
    }

    private static IEnumerable<Element> Watch(SheetContext context, StayPart part)
    {
        var may = May(context, part).ToList();
        var others = part.Companies.SelectMany(c => c.Ewes).Select(e => (Ewe: e, Why: Why(e))).Where(e => e.Why.Length > 0).ToList();
        Run[] soon = may.Count switch
        {
            0 => [],
            > MostNamed => [new Run($" the {may.Count} ewes that may lamb: the roll overleaf has their days.", TypeScale.Body)],
            _ =>
            [
                .. Named(may.Select(e => (e, e.Due!.Earliest <= part.From ? "now" : $"from {DateText.Short(e.Due.Earliest)}"))),
                new Run($": {Likely(context, part, may.Count)}", TypeScale.Body),
            ],
        };
        Run[] odd = others.Count is > 0 and <= MostNamed ? [.. Named(others), new Run(".", TypeScale.Body)] : [];
        return soon.Length + odd.Length == 0 ? [] : [new Text([new Run("Watch", TypeScale.BodyBold), .. soon, .. odd], Leading: 1.15)];
    }

    /// <summary>Whose span of nine chances in ten touches the days, soonest first.</summary>
    public static IEnumerable<EwePlan> May(SheetContext context, StayPart part) => context.Plan.Ewes
        .Where(e => e.Due is { } due && due.Earliest <= part.To && due.Latest >= part.From).OrderBy(e => e.Due!.Earliest).ThenBy(e => e.Ewe.Tag, StringComparer.Ordinal);

    private static string Likely(SheetContext context, StayPart part, int ewes)
    {
        var expected = context.Plan.Lambing.Days.Where(d => d.Date >= part.From && d.Date <= part.To).Sum(d => d.ExpectedEwes);
        return expected >= 0.75 ? $"about {Math.Round(expected, MidpointRounding.AwayFromZero):0} will lamb."
            : ewes switch { 1 => "most likely she will not lamb yet.", 2 => "most likely neither will lamb.", _ => "most likely none will lamb." };
    }

    private static string Why(EwePlan ewe) =>
        ewe.Ewe.Toes == Toes.Lame ? "was lame"
        : ewe.IsCarrying && ewe.Ewe.Condition < 2.5m ? "was thin"
        : "";

    private static IEnumerable<Run> Named(IEnumerable<(EwePlan Ewe, string Why)> ewes) => ewes.SelectMany(
        (e, i) => new[] { new Run(i == 0 ? " " : ", ", TypeScale.Body), Who.Called(e.Ewe.Ewe, TypeScale.Body), new Run($" {e.Why}", TypeScale.Body) });

    private static Text Said(string bold, string plain) => Block.BoldThen(bold, plain, TypeScale.Body, 1.15);
}
