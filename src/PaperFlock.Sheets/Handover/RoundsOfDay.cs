namespace PaperFlock.Sheets.Handover;

/// <summary>The rounds of a day, and at which of them something is fed.</summary>
internal static class RoundsOfDay
{
    /// <summary>"07:40", "15:50"; where the day has no such round what it is called.</summary>
    public static IEnumerable<string> FedAt(SeasonPlan plan, LocalDate day, ImmutableArray<FeedTime> fedAt) =>
        fedAt.Select(feed => On(plan, day)?.At(feed) is { } round ? DateText.Clock(round.At) : FeedText.Time(feed, plan.Flock.Holding));

    /// <summary>"07:40 FEED · 12:10 look · 15:50 FEED", of the first day.</summary>
    public static IEnumerable<Run> Of(SeasonPlan plan, StayPart part)
    {
        if (On(plan, part.From) is not { } day)
        {
            yield break;
        }

        var fed = FedAt(part).Select(day.At).ToHashSet();
        foreach (var round in day.Times)
        {
            var isFeed = fed.Contains(round);
            yield return new Run($"{(round == day.Times[0] ? "" : " · ")}{DateText.Clock(round.At)}\u00a0{(isFeed ? "FEED" : "look")}", isFeed ? Block.Bold(TypeScale.Lead) : TypeScale.Lead);
        }
    }

    /// <summary>The first day of a stay with more rounds than the day it begins on; null where there is none.</summary>
    public static LocalDate? ByNight(SeasonPlan plan, StayPart part) => On(plan, part.From) is { } first
        ? plan.Rounds.FirstOrDefault(r => r.Date > part.From && r.Date <= part.To && r.Times.Length > first.Times.Length)?.Date
        : null;

    /// <summary>Whether rounds that go by the light are at other times later in the stay.</summary>
    public static bool Move(SeasonPlan plan, StayPart part) =>
        plan.Rounds.Where(r => r.Date >= part.From && r.Date <= part.To).SelectMany(r => r.Times).Where(t => t.Part != PartOfDay.Night).GroupBy(t => t.Part).Any(g => g.Select(t => t.At).Distinct().Count() > 1);

    /// <summary>When anybody is fed, in the order of the day.</summary>
    public static ImmutableArray<FeedTime> FedAt(StayPart part) => [.. part.Companies.SelectMany(c => c.Feeds(part.From, part.To)).SelectMany(f => f.FedAt).Distinct().Order()];

    private static RoundDay? On(SeasonPlan plan, LocalDate day) => plan.Rounds.FirstOrDefault(r => r.Date == day);
}
