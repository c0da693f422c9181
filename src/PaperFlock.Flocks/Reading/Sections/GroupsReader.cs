namespace PaperFlock.Flocks.Reading.Sections;

internal static class GroupsReader
{
    /// <summary>A group tupped further from the season's own day than this belongs to another season.</summary>
    private const int FurthestDays = 183;

    private static readonly ImmutableArray<string> UsualRaddle = ["yellow", "orange", "red", "blue"];

    public static GroupsDraft Read(Section top, SeasonDraft season)
    {
        if ((top.IsGiven("groups") ? top.Find("groups")?.AsItems() : []) is not { } items)
        {
            return new GroupsDraft([], AreListed: true, AreAllNamed: false);
        }

        if (items.Count == 0)
        {
            return Unlisted(season);
        }

        var groups = ImmutableArray.CreateBuilder<GroupDraft>();
        var names = new UniqueNames("group");
        foreach (var entry in items.Select(i => i.AsSection()).OfType<Section>())
        {
            var name = names.Read(entry);
            var made = Group(entry, name ?? "", season);
            if (name is not null)
            {
                CheckTup(entry, made, groups);
                groups.Add(new GroupDraft(name, made, entry.Find("name")!.Span));
            }
        }

        return new GroupsDraft(groups.ToImmutable(), AreListed: true, AreAllNamed: groups.Count == items.Count);
    }

    /// <summary>
    /// One tup with two groups at once: either they run in one field, or a name or a date is wrong. Artificial mating needs no tup in
    /// the field, and on the day he changes over he may be written down in both.
    /// </summary>
    private static void CheckTup(Section entry, TuppingGroup? made, IEnumerable<GroupDraft> before)
    {
        if (made is null || made.Mating == Mating.Artificial)
        {
            return;
        }

        var elsewhere = before.Select(g => g.Made).OfType<TuppingGroup>()
            .Where(g => g.Mating != Mating.Artificial && (made.Field is null || made.Field != g.Field))
            .SelectMany(g => g.Turns.Select(turn => (Group: g.Name, Turn: turn)))
            .ToList();
        foreach (var turn in made.Turns)
        {
            var (group, other) = elsewhere.FirstOrDefault(e => TagKey.Of(e.Turn.Name) == TagKey.Of(turn.Name) && turn.In < e.Turn.Out && e.Turn.In < turn.Out);
            entry.Bag.Add(other is null ? null : FlockMessages.TupInTwoGroups(
                (entry.Find("tup") ?? entry.Find("tups")!).Span, turn.Name, group, LocalDate.Max(turn.In, other.In), LocalDate.Min(turn.Out, other.Out)));
        }
    }

    private static GroupsDraft Unlisted(SeasonDraft season)
    {
        var made = season is { TupIn: { } tupIn, TupOut: { } tupOut }
            ? new TuppingGroup("", null, Mating.Natural, tupIn, tupOut, UsualRaddle, season.Span)
            : null;
        return new GroupsDraft([new GroupDraft("", made, season.Span)], AreListed: false, AreAllNamed: true);
    }

    private static TuppingGroup? Group(Section group, string name, SeasonDraft season)
    {
        var tup = group.Find("tup")?.AsText();
        var runsIn = group.Find("field")?.AsText();
        var matingField = group.Find("mating");
        var mating = matingField?.AsChoice<Mating>();
        var raddle = group.Find("raddle") is { } field ? Raddle(field) : UsualRaddle;
        if (matingField is not null && mating is null)
        {
            return null;
        }

        if (mating is null or Mating.Natural && group.IsGiven("tups"))
        {
            return TupsReader.Read(group, season) is { } turns
                ? new TuppingGroup(name, string.Join(", then ", turns.Select(t => t.Name)), Mating.Natural, turns[0].In, turns.Max(t => t.Out), raddle, group.Span) { Field = runsIn, Tups = [.. turns] }
                : null;
        }

        var stay = mating is null or Mating.Natural ? NaturalStay(group, season) : OneDay(group, season);
        return stay is { } days
            ? new TuppingGroup(name, tup, mating ?? Mating.Natural, days.In, days.Out, mating is null or Mating.Natural ? raddle : [], group.Span) { Field = runsIn }
            : null;
    }

    private static (LocalDate In, LocalDate Out)? NaturalStay(Section group, SeasonDraft season)
    {
        if (group.Find("date") is { } date)
        {
            return date.Refuse<(LocalDate, LocalDate)?>(FlockMessages.DoesNotApply(
                date.KeySpan, "date", "for natural mating", "give `tup-in` and `tup-out`, or `mating: artificial` or `mating: hand` for one day"));
        }

        var ownOut = group.Find("tup-out")?.AsDate();
        var tupIn = group.IsGiven("tup-in") ? Near(group.Find("tup-in"), season) : season.TupIn;
        if (tupIn is not { } from)
        {
            return null;
        }

        if (group.Find("tup-out") is { } outField)
        {
            return ownOut is { } to && SeasonReader.IsPossible(from, to, outField) ? (from, to) : null;
        }

        var tupOut = group.IsGiven("tup-in")
            ? LocalDate.Max(from.PlusDays(SeasonReader.UsualStayDays), season.StatedTupOut is not null && season.TupOut is { } stated ? stated : from)
            : season.TupOut;
        return tupOut is { } until ? (from, until) : null;
    }

    private static (LocalDate In, LocalDate Out)? OneDay(Section group, SeasonDraft season)
    {
        group.RefuseGiven("for artificial or hand mating", "keep `date`, the one day they were mated, and take this out", "tup-in", "tup-out", "tups", "raddle");
        return Near(group.Require("date"), season) is { } day ? (day, day) : null;
    }

    public static LocalDate? Near(Field? field, SeasonDraft season) =>
        field?.AsDate() is not { } day ? null
        : season.TupIn is { } tupIn && Math.Abs(Period.DaysBetween(tupIn, day)) > FurthestDays
            ? field.Refuse<LocalDate?>(FlockMessages.FarFromSeason(field.Span, field.Name, day, tupIn))
        : day;

    private static ImmutableArray<string> Raddle(Field field)
    {
        if (field.Value is Yaml.Scalar { IsPlain: true } word && ChoiceValues.IsFalse(word.Text))
        {
            return [];
        }

        var colours = new List<string>();
        foreach (var item in field.AsItems() ?? [])
        {
            if (item.AsText() is { } colour)
            {
                field.Bag.Add(colours.Contains(colour, StringComparer.OrdinalIgnoreCase) ? FlockMessages.SameColour(item.Span, colour) : null);

                colours.Add(colour);
            }
        }

        return [.. colours];
    }
}
