namespace PaperFlock.Sheets;

/// <summary>What the housing plan says, plainly.</summary>
public static class HousingText
{
    /// <summary>DEFRA PB5162: pregnant ewes in groups of under 50 where possible.</summary>
    private const int LargeGroup = 50;

    private const int MostNamed = 6;

    public static Phrase Of(HousingPlan housing, Flocks.Housing file)
    {
        if (file.Lambing == LambingPlace.Outdoors)
        {
            return "The ewes lamb outdoors: no pens are planned.";
        }

        if (file.Pens.IsEmpty)
        {
            return "The flock file names no pens, so nobody is placed in one.";
        }

        var housed = housing.Pens.Sum(p => p.Ewes.Length);
        var sentences = Pens(housing);
        var untroughed = file.Pens.Where(p => p.Trough is null).Select(p => p.Name).ToList();
        if (untroughed.Count > 0 && housed + housing.WithoutRoom.Length > 0)
        {
            sentences = sentences.Append($"No trough length is given for {English.List(untroughed)}, so only floor is reckoned there.");
        }

        return Fit(housed, housing.WithoutRoom) + string.Concat(sentences.Select(s => " " + s));
    }

    /// <summary>Whether there is room once there are lambs, and by when the first must be out if there is not.</summary>
    /// <param name="turnout">Days after lambing, as the flock file has it.</param>
    public static string WithLambs(RoomWithLambs? room, int turnout) => room switch
    {
        null => "",
        { FullOn: null } => "There is room with lambs too.",
        { FullOn: { } full, DaysThatFit: null } => $"With lambs the shed holds {room.Holds}: from {DateText.Short(full)} each must go out as she lambs.",
        { FullOn: { } full, DaysThatFit: { } days } => $"With lambs the shed holds {room.Holds}: some must be out by {DateText.Short(full)}. "
            + $"Turn out {English.CountLoose(Math.Min(days, turnout), "day", "days")} after lambing{(days < turnout ? $", not {turnout}" : "")}: then all have room.",
    };

    /// <summary>Where ewes of one pen cannot eat together.</summary>
    /// <param name="heads">At each of its troughs; two or more.</param>
    public static string Hurdles(PenPlan pen, IReadOnlyList<int> heads) =>
        $"Hurdle in {pen.Pen.Name}: {English.List([.. heads.Select(h => h.ToString(CultureInfo.InvariantCulture))])} eat apart"
        + (pen.HoldsHurdles(heads.Count - 1) ? "." : ", and the trough is then too short.");

    /// <summary>"4.8 m by 3.6 m, trough 7.6 m".</summary>
    internal static string Measures(Pen pen, Theme.Amounts amounts) =>
        $"{amounts.Metres(pen.Length.Metres)} by {amounts.Metres(pen.Width.Metres)}" + (pen.Trough is { } trough ? $", trough {amounts.Metres(trough.Metres)}" : "");

    /// <summary>How the plan of the shed is to be read.</summary>
    internal static string Drawn(ImmutableArray<Pen> pens) =>
        $"Drawn to one scale{(pens.All(p => p.At is null) ? ", side by side and not as they lie" : "")}; black bar: a trough, wherever it stands. ";

    private static IEnumerable<string> Pens(HousingPlan housing)
    {
        foreach (var pen in housing.Pens.Where(p => p.Ewes.Length >= LargeGroup))
        {
            yield return $"{pen.Pen.Name} holds {pen.Ewes.Length} ewes: groups of under {LargeGroup} are advised where possible (DEFRA PB5162).";
        }
    }

    private static Phrase Fit(int housed, ImmutableArray<Ewe> without)
    {
        if (without.IsEmpty)
        {
            return housed == 0 ? "No ewe is in lamb: nobody is housed." : housed switch { 1 => "She fits.", 2 => "Both ewes fit.", _ => $"All {housed} ewes fit." };
        }

        List<Phrase> named = [.. without.Take(MostNamed).Select(e => (Phrase)e)];
        if (without.Length > MostNamed)
        {
            named.Add($"{without.Length - MostNamed} more");
        }

        return $"The shed is too small: {English.Plural(without.Length, $"{without.Length} ewe has", $"{without.Length} ewes have")} no room (" + Phrase.List(named) + ").";
    }
}
