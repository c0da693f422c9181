namespace PaperFlock.Sheets.Handover;

/// <summary>Ewes with lambs: each with the day she lambed, from which her mornings are counted, and where she goes meanwhile.</summary>
internal static class LambedBlock
{
    /// <summary>More are in a block of their own.</summary>
    public const int Most = 8;

    public static Column Lines(SheetContext context, StayPart part, IEnumerable<EwePlan> ewes, EweNames names) => new(
        [
            Block.Text($"Each by {FeedCodes.Lambed} overleaf.", TypeScale.Body),
            .. ewes.Select(e => names.Line(Said(context, part, e)) with { About = RowKey.Of(e.Ewe) }),
        ],
        2);

    private static Text Said(SheetContext context, StayPart part, EwePlan ewe)
    {
        var name = EweNames.Said(ewe);
        var stays = context.Plan.Whereabouts.Of(ewe.Ewe).Where(s => s.To >= part.From && s.From <= part.To)
            .Select((s, i) => i == 0 ? FeedText.Place(s.Place).ToLowerInvariant() : $"from {DateText.Short(s.From)} {(s.Place.Name is { } field ? $"out in {field}" : FeedText.Place(s.Place).ToLowerInvariant())}");
        return name with { Runs = [.. name.Runs, new Run($" lambed {DateText.Short(ewe.Ewe.Lambed!.Value)}; {string.Join(", ", stays)}", TypeScale.Label)] };
    }
}
