using NodaTime;
using PaperFlock.Planning.Text;

namespace PaperFlock.Planning.Jobs;

/// <summary>Why a job is on its day, and what is wrong when it has none.</summary>
internal sealed class JobWords(KeeperCalendar calendar, ILookup<LocalDate, JobNeed> gathered)
{
    /// <summary>More than this many jobs sharing a gathering are counted, not named.</summary>
    private const int Named = 3;

    public string Why(Placement placement)
    {
        var need = placement.Need;
        IEnumerable<string?> parts =
        [
            need.Reason,
            placement.Date is { } day ? WhyDay(placement, day, $"moved from {DateText.Loose(need.Best)} to save a gathering") : "it has no day yet: the keeper is away for the whole of its window",
            need.Remark,
            placement.Date is { } date && need.Handled ? Shared(need, date) : null,
        ];
        var sentence = string.Join("; ", parts.Where(p => p is not null));
        return $"{char.ToUpperInvariant(sentence[0])}{sentence[1..]}.";
    }

    /// <summary>Why it is not on its best day, or what is odd about its day; null when there is nothing to say.</summary>
    public string? Moved(Placement placement) =>
        placement.Date is { } day ? WhyDay(placement, day, "to save a gathering") : null;

    public static string Trouble(JobNeed need, LocalDate? nearest)
    {
        var (earliest, latest) = (DateText.Loose(need.Earliest), DateText.Loose(need.Latest));
        var away = need.Earliest == need.Latest
            ? $"The keeper is away on {DateText.Loose(need.Best)}, the one day it may be done"
            : $"The keeper is away on every day it may be done, {earliest} to {latest}";
        var instead = nearest is { } day
            ? $"the nearest day that would do is {DateText.Loose(day)}"
            : "no day within a year would do";
        return $"{away}; {instead}.";
    }

    private string? WhyDay(Placement placement, LocalDate day, string saving)
    {
        var need = placement.Need;
        if (need.Fixed)
        {
            return calendar.IsAway(day) ? "the keeper is away that day" : null;
        }

        if (placement.Kind == DayKind.Present)
        {
            return "nobody is free on any day of its window, so it is on one that is not";
        }

        var nearest = calendar.DaysFor(need.Earliest, need.Latest).Days.Min(d => DaysOff(d, need));
        return DaysOff(day, need) switch
        {
            0 => null,
            var off when off == nearest => calendar.IsAway(need.Best)
                ? $"the nearest free day, as the keeper is away on {DateText.Loose(need.Best)}"
                : "the nearest free day",
            _ => saving,
        };
    }

    private static int DaysOff(LocalDate day, JobNeed need) => Math.Abs(Period.DaysBetween(day, need.Best));

    private string? Shared(JobNeed need, LocalDate day)
    {
        var others = gathered[day].Where(n => !ReferenceEquals(n, need)).ToList();
        if (others.Count == 0)
        {
            return null;
        }

        var names = string.Join(", ", others.Take(Named).Select(n => n.Group is { Name.Length: > 0 } group ? $"{n.Title} ({group.Name})" : n.Title));
        return others.Count > Named
            ? $"one gathering with {names} and {others.Count - Named} more"
            : $"one gathering with {names}";
    }
}
