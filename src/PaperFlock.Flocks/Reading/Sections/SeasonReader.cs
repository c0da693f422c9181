namespace PaperFlock.Flocks.Reading.Sections;

internal static class SeasonReader
{
    /// <summary>Two and a half cycles of seventeen days: common practice, no source.</summary>
    public const int UsualStayDays = 42;

    /// <summary>A tup in for longer than this makes it two seasons, or a slip in the year.</summary>
    private const int LongestStayDays = 183;

    public const int UsualGestationDays = 147;

    /// <summary>Either way from today: the paper of a season is made from before the tup goes in until its lambs are weaned.</summary>
    private const int FurthestMonths = 13;

    /// <param name="today">Null: nothing is held against the calendar.</param>
    public static SeasonDraft Read(Section season, LocalDate? today)
    {
        var gestation = season.Find("gestation-days");
        var gestationDays = GestationLimits.Read(gestation);
        var tupInField = season.Find("tup-in");
        var lambingField = season.Find("lambing-from");
        var tupIn = tupInField?.AsDate();
        var lambingFrom = lambingField?.AsDate();
        season.Bag.Add(
            season.CountOfAlternatives == 2 ? FlockMessages.StatedTwice((lambingField ?? tupInField)?.KeySpan ?? season.Span, "lambing-from", "tup-in")
            : season.IsThere && season.CountOfAlternatives == 0 && !season.IsAlternativeMistyped ? FlockMessages.NoSeasonStart(season.Span)
            : null);
        if (season.CountOfAlternatives == 1 && lambingFrom is { } first && (gestation is null || gestationDays is not null))
        {
            tupIn = first.PlusDays(-(gestationDays ?? UsualGestationDays));
        }

        var statedOut = season.Find("tup-out")?.AsDate();
        var tupOut = season.IsGiven("tup-out") ? statedOut : tupIn?.PlusDays(UsualStayDays);
        if (season.Find("tup-out") is { } outField && tupIn is { } from && statedOut is { } to && !IsPossible(from, to, outField))
        {
            tupOut = null;
        }

        var span = (tupInField ?? lambingField)?.Span ?? season.Span;
        season.Bag.Add(tupIn is { } day && today is { } now && (day < now.PlusMonths(-FurthestMonths) || day > now.PlusMonths(FurthestMonths))
            ? FlockMessages.AnotherSeason(span, day, now)
            : null);

        return new SeasonDraft(tupIn, tupOut, statedOut, gestationDays ?? UsualGestationDays, span) { Last = season.Find("last")?.AsText() };
    }

    /// <summary>Reports, at the field of the day he leaves, a stay that ends before it begins or never seems to end.</summary>
    public static bool IsPossible(LocalDate tupIn, LocalDate tupOut, Field at)
    {
        var wrong = tupOut < tupIn ? FlockMessages.TupOutBeforeTupIn(at.Span, tupOut, tupIn)
            : tupOut > tupIn.PlusDays(LongestStayDays) ? FlockMessages.FarFromSeason(at.Span, at.Name, tupOut, tupIn)
            : null;
        at.Bag.Add(wrong);
        return wrong is null;
    }

    public static IEnumerable<BreedDraft> Breeds(Section top)
    {
        var names = new UniqueNames("breed");
        foreach (var entry in top.ListBelow("breeds"))
        {
            var name = names.Read(entry);
            var breed = new Breed(name ?? "?", GestationLimits.Read(entry.Find("gestation-days")), entry.Find("mature-weight")?.AsMass());
            if (name is not null)
            {
                yield return new BreedDraft(breed, entry.Find("mature-weight"));
            }
        }
    }
}
