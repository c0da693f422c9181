using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Text;

namespace PaperFlock.Planning.Dates;

/// <summary>First and last due day of a tupping group, on which its jobs hang.</summary>
/// <param name="First">Null, as <paramref name="Last"/>, when no ewe of the group can be in lamb.</param>
internal readonly record struct GroupDueDates(LocalDate? First, LocalDate? Last)
{
    private readonly string? _firstWhy;
    private readonly string? _lastWhy;

    /// <summary>How <see cref="First"/> is known, in a sentence without its full stop; empty when there is none.</summary>
    public string FirstWhy
    {
        get => _firstWhy ?? "";
        init => _firstWhy = value;
    }

    /// <summary>The same of <see cref="Last"/>.</summary>
    public string LastWhy
    {
        get => _lastWhy ?? "";
        init => _lastWhy = value;
    }

    /// <summary>The same days are the same dates, however they are known.</summary>
    public bool Equals(GroupDueDates other) => First == other.First && Last == other.Last;

    public override int GetHashCode() => HashCode.Combine(First, Last);

    /// <summary>
    /// From the marks or matings that hold where every ewe has one, else from the tup's stay, since a ewe without a mark may
    /// have been mated on any day of it. Ewes that have lambed stay in, so that the jobs already done do not move.
    /// </summary>
    /// <param name="ewes">The whole flock's.</param>
    public static GroupDueDates Of(Flock flock, TuppingGroup group, ImmutableArray<EwePlan> ewes)
    {
        var matings = ewes
            .Where(e => e.Ewe.Group == group.Name && e.Standing is (Standing.ToLamb or Standing.Lambed))
            .Select(e => (e.Ewe, Evidence: MatingEvidence.Of(e.Ewe, group, flock.Practice), Carries: flock.GestationDaysOf(e.Ewe)))
            .ToList();
        if (matings.Count == 0)
        {
            return default;
        }

        if (matings.All(m => m.Evidence.IsOneDay))
        {
            var first = matings.MinBy(m => m.Evidence.FirstDay.PlusDays(m.Carries));
            var last = matings.MaxBy(m => m.Evidence.LastDay.PlusDays(m.Carries));
            return new(first.Evidence.FirstDay.PlusDays(first.Carries), last.Evidence.LastDay.PlusDays(last.Carries))
            {
                FirstWhy = $"the first of its ewes is {first.Ewe.CallName}, {first.Evidence.Words}, and {first.Carries} days on from there; the day is known for every ewe of the group",
                LastWhy = $"the last of its ewes is {last.Ewe.CallName}, {last.Evidence.Words}, and {last.Carries} days on from there; the day is known for every ewe of the group",
            };
        }

        var shortest = matings.Min(m => m.Carries);
        var longest = matings.Max(m => m.Carries);
        var unsure = matings.Count(m => !m.Evidence.IsOneDay);
        return new(group.TupIn.PlusDays(shortest), group.TupOut.PlusDays(longest))
        {
            FirstWhy = $"the tup goes in on {DateText.Loose(group.TupIn)}, and {shortest} days on from there; {AnyDay(unsure, matings.Count)}",
            LastWhy = $"the tup comes out on {DateText.Loose(group.TupOut)}, and {longest} days on from there; {AnyDay(unsure, matings.Count)}",
        };
    }

    private static string AnyDay(int unsure, int ewes)
    {
        var all = English.CountLoose(ewes, "ewe", "ewes");
        return English.Plural(
            unsure,
            $"of {all} {unsure} has no mark and no day of mating, so any day with the tup may be the one",
            $"of {all} {unsure} have no mark and no day of mating, so any day with the tup may be the one");
    }
}
