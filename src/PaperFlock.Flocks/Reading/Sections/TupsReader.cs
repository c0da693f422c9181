namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>The tups of a group in which one took over from another.</summary>
internal static class TupsReader
{
    /// <returns>In the order they came, never empty; null when one is wrong, and that is reported.</returns>
    public static IReadOnlyList<TupTurn>? Read(Section group, SeasonDraft season)
    {
        group.RefuseGiven("beside `tups`", "take it out: the days of each tup stand under `tups`", "tup", "tup-in", "tup-out", "date");
        if (group.Find("tups") is not { } field || field.AsItems() is not { } items)
        {
            return null;
        }

        if (items.Count == 0)
        {
            return field.Refuse<IReadOnlyList<TupTurn>>(FlockMessages.WrongCount(field.Span, field.Name, "at least one tup, or to be taken out", "[{name: Bramley, in: 2026-08-10, out: 2026-09-01}]"));
        }

        var turns = new List<TupTurn>();
        foreach (var item in items)
        {
            if (item.AsSection() is not { } entry || Turn(entry, season) is not { } turn)
            {
                return null;
            }

            // Two with the ewes for longer than the day one takes over: legal, and a pity for the flock book.
            entry.Bag.Add(turns.Find(o => turn.In < o.Out && o.In < turn.Out) is { } other
                ? FlockMessages.TupsTogether(entry.Find("name")!.Span, turn.Name, other.Name, LocalDate.Max(turn.In, other.In), LocalDate.Min(turn.Out, other.Out))
                : null);
            turns.Add(turn);
        }

        return [.. turns.OrderBy(t => t.In)];
    }

    private static TupTurn? Turn(Section entry, SeasonDraft season)
    {
        var name = entry.Require("name")?.AsText();
        var tupIn = GroupsReader.Near(entry.Require("in"), season);
        var tupOut = entry.Require("out")?.AsDate();
        return name is not null && tupIn is { } from && tupOut is { } to && SeasonReader.IsPossible(from, to, entry.Find("out")!) ? new TupTurn(name, from, to) : null;
    }
}
