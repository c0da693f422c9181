namespace PaperFlock.Sheets;

/// <summary>What rounds are called, and why there are so many.</summary>
public static class RoundText
{
    /// <summary>"first light", "midday", "evening 2", …</summary>
    public static string Name(Round round)
    {
        var part = round.Part switch
        {
            PartOfDay.FirstLight => "first light",
            PartOfDay.Morning => "morning",
            PartOfDay.Midday => "midday",
            PartOfDay.Afternoon => "afternoon",
            PartOfDay.Dusk => "dusk",
            PartOfDay.Evening => "evening",
            PartOfDay.Late => "late",
            PartOfDay.Night => "night",
            _ => throw new ArgumentOutOfRangeException(nameof(round)),
        };
        return round.Number == 1 ? part : $"{part} {round.Number}";
    }

    public static string Why(RoundReason reason, Practice practice) => reason switch
    {
        RoundReason.NoneInLamb => "no ewe is in lamb",
        RoundReason.OutsideHeavyWeeks => "outside the heavy weeks",
        RoundReason.Lambing => "ewes may lamb: from the first day of the earliest span to the last day of the latest, by night too",
        _ => $"the heavy weeks, from {English.CountLoose(practice.ChecksPerDay.HeavyFromWeeksBeforeLambing, "week", "weeks")} before the first is due until the last has most likely lambed",
    };
}
