namespace PaperFlock.Sheets;

/// <summary>What the lambing curve says, for someone who does not read curves.</summary>
public static class LambingText
{
    public static string Of(LambingCurve curve, Flocks.Housing housing)
    {
        if (curve.Days.IsEmpty)
        {
            return "No ewe is in lamb.";
        }

        var busiest = curve.Days.OrderByDescending(d => d.ExpectedEwes).ThenBy(d => d.Date).First();
        var toLamb = English.CountLoose(curve.Ewes, "ewe", "ewes");
        var high = English.CountLoose(busiest.P90, "ewe", "ewes");
        var words = $"{toLamb} to lamb; the busiest day looks like {DateText.Loose(busiest.Date)}, with {high} or fewer nine times in ten.";
        return housing.Lambing == LambingPlace.Outdoors ? words : $"{words} {Pens(housing.LambingPens, curve.Days)}";
    }

    private static string Pens(int? pens, ImmutableArray<LambingDay> days)
    {
        var wanted = days.Max(d => d.PensNeededP90);
        if (pens is not { } there)
        {
            return $"{English.CountLoose(wanted, "lambing pen", "lambing pens")} would be enough on any one night nine times in ten.";
        }

        var worst = days.OrderByDescending(d => d.ChanceOverPens).ThenBy(d => d.Date).First();
        var night = DateText.Loose(worst.Date);
        var named = English.CountLoose(there, "lambing pen", "lambing pens");
        var oneIn = worst.ChanceOverPens is > 0 and { } chance ? Math.Round(1 / chance) : 0;
        return worst.ChanceOverPens switch
        {
            < 0.005 => $"{named} should be enough on every night, taken one by one.",
            > 0.9 => $"{named} would hardly ever be enough on the worst night, {night}; {wanted} would be, nine times in ten.",
            > 0.5 => $"{named} would more often than not be too few on the worst night, {night}; {wanted} would be enough nine times in ten.",
            _ when wanted > there => $"{named} would not be enough on the worst night, {night}, 1 time in {oneIn:0}; {wanted} would be, nine times in ten.",
            _ => $"{named} would not be enough on the worst night, {night}, 1 time in {oneIn:0}.",
        };
    }
}
