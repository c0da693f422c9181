namespace PaperFlock.Sheets.RoundLog;

/// <summary>What the log says about its days.</summary>
internal static class LogText
{
    /// <summary>Longer than this and nobody looks: a lambing goes wrong in less.</summary>
    private const int LongestGapMinutes = 6 * 60;

    public const string Saw = "which ewe, what you saw and did";

    /// <summary>A lambing is written down where her lambs are counted; here it is only said.</summary>
    public static readonly string Lambed = $"lambed: write it on {WhoLambsWhen.DueSheet.Definition.Code} and her card too";

    /// <summary>"Rounds, Sun 27 to Wed 30 Dec".</summary>
    public static string Title(LocalDate from, LocalDate to) => from == to ? $"Rounds, {DateText.Short(from)}"
        : from.Month == to.Month ? $"Rounds, {DateText.WeekdayNumber(from)} to {DateText.Short(to)}"
        : $"Rounds, {DateText.Short(from)} to {DateText.Short(to)}";

    /// <summary>Whom to ring, and how it is filled in.</summary>
    public static Text Lead(SheetContext context)
    {
        var flock = context.Flock;
        var numbers = $"{People.Keeper(flock)} {People.Phone(flock, c => People.IsKeeper(c, flock))} \u00b7 vet {People.Phone(flock, c => c.IsVet)}.";
        return new Text(
            [
                new Run(numbers, TypeScale.BodyBold),
                new Run($" Count every place. At a feed write the heads and the {context.Amounts.AtFeedUnit} for all of them. Not so? Circle the box and say why. On her back? Roll her onto her feet, hold her till she stands. Down again: the vet.", TypeScale.Body),
            ],
            Leading: 1.15);
    }

    /// <summary>On days on which ewes may lamb, if nobody looks for long.</summary>
    public static string? Unseen(ImmutableArray<RoundDay> days)
    {
        var gap = days.Where(d => d.Why == RoundReason.Lambing).Select(d => d.LongestGap).DefaultIfEmpty().MaxBy(g => g.Minutes);
        return gap.Minutes > LongestGapMinutes
            ? $"Ewes may lamb on these days, and nobody looks from {DateText.Clock(gap.From)} to {DateText.Clock(gap.To)}: {gap.Minutes / 60} hours."
            : null;
    }

    /// <summary>"sun 08:31 to 15:52"; empty where the place is not known.</summary>
    public static string Sun(RoundDay day) => day.IsByClock ? "" : day is { Sunrise: { } rise, Sunset: { } set }
        ? $"sun {DateText.Clock(rise)} to {DateText.Clock(set)}"
        : "no sunrise or sunset";

    /// <summary>Rounds at which somebody is fed say so, and whether it is only ewes with lambs.</summary>
    public static string Round(Round round, bool fed, bool onlyLambed) => fed ? onlyLambed ? "with lambs" : "feed" : round.Part == PartOfDay.Night ? "night" : "look";
}
