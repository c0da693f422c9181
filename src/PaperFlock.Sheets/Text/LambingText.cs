namespace PaperFlock.Sheets;

/// <summary>What the lambing curve says, for someone who does not read curves.</summary>
public static class LambingText
{
    private const int MostNamed = 3;

    public static string Of(LambingCurve curve, Flocks.Housing housing)
    {
        if (curve.Days.IsEmpty)
        {
            return "No ewe is in lamb.";
        }

        var busiest = curve.BusiestNights.Select(n => curve.On(n)!).ToArray();
        var toLamb = English.CountLoose(curve.Ewes, "ewe", "ewes");
        var nights = busiest.Length == 1 ? "night looks" : "nights look";
        var high = English.CountLoose(busiest.Max(d => d.P90), "ewe", "ewes");
        var words = $"{toLamb} to lamb; the busiest {nights} like {Spans(curve.BusiestNights)}, with {high} or fewer nine times in ten.";
        return housing.Lambing == LambingPlace.Outdoors ? words : $"{words} {Pens(housing.LambingPens, curve)}";
    }

    /// <summary>Nights that follow on are one span; past a few spans the rest are not named.</summary>
    private static string Spans(ImmutableArray<LocalDate> nights)
    {
        var spans = DateText.Runs(nights).Select(run => DateText.Span(run).Replace('\u00a0', ' ')).ToArray();
        return English.List(spans.Length > MostNamed ? [.. spans.Take(MostNamed), "other nights"] : spans);
    }

    private static string Pens(int? pens, LambingCurve curve)
    {
        var wanted = curve.PensForTheSeason;
        if (pens is not { } there)
        {
            return $"{English.CountLoose(wanted, "lambing pen", "lambing pens")} would be enough all season, nine times in ten.";
        }

        var named = English.CountLoose(there, "lambing pen", "lambing pens");
        var more = wanted > there ? $"; {wanted} would be enough nine times in ten" : "";
        return curve.ChanceTooFewPensOnSomeNight switch
        {
            < 0.005 => $"{named} should be enough on every night.",
            > 0.9 => $"{named} would hardly ever be enough all season{more}.",
            > 0.5 => $"{named} would more often than not be too few on some night{more}.",
            { } chance => $"{named} would be too few on some night 1 season in {Math.Round(1 / chance):0}{more}.",
            null => "",
        };
    }
}
