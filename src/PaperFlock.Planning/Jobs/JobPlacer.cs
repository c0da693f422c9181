using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Jobs;

/// <summary>
/// Gives every job its day. Fixed jobs stand; handling jobs take the fewest gatherings that meet every window, sharing with
/// the fixed ones where those days are theirs to have; the rest go on the nearest day. A free day always beats one on which
/// the keeper is merely there, and no job is put into an absence.
/// </summary>
internal sealed class JobPlacer(KeeperCalendar calendar)
{
    /// <returns>In the order of <paramref name="needs"/>.</returns>
    public ImmutableArray<Placement> Place(ImmutableArray<JobNeed> needs)
    {
        var placed = new Placement?[needs.Length];
        var movable = new List<Choice>();
        var leads = new Dictionary<(string Id, TuppingGroup? Group), int>();
        for (var i = 0; i < needs.Length; i++)
        {
            var need = needs[i];
            if (need.Fixed)
            {
                placed[i] = new(need, need.Best, DayKind.Free);
            }
            else if (need.RidesWith is null)
            {
                leads.TryAdd((need.Id, need.Group), i);
                var (kind, days) = calendar.DaysFor(need.Earliest, need.Latest);
                movable.Add(new(i, need, kind, days));
            }
        }

        foreach (var choice in movable.Where(c => c.Days.IsEmpty))
        {
            placed[choice.Index] = new(choice.Need, null, choice.Kind);
        }

        foreach (var choice in movable.Where(c => !c.Days.IsEmpty && !c.Need.Handled))
        {
            var nearest = choice.Days.MinBy(d => Math.Abs(Period.DaysBetween(d, choice.Need.Best)));
            placed[choice.Index] = new(choice.Need, nearest, choice.Kind);
        }

        var handled = movable.Where(c => !c.Days.IsEmpty && c.Need.Handled).ToLookup(c => c.Kind);
        var riders = needs.Where(n => n.RidesWith is not null).ToLookup(n => (n.RidesWith!, n.Group));
        var standing = placed.Where(p => p is { Need: { Handled: true, Fixed: true } }).Select(p => p!.Date!.Value).ToHashSet();
        foreach (var kind in handled)
        {
            foreach (var (choice, day) in Gather([.. kind], riders, standing))
            {
                placed[choice.Index] = new(choice.Need, day, choice.Kind);
            }
        }

        return [.. needs.Select((need, i) => placed[i] ?? WithLead(need))];

        Placement WithLead(JobNeed need) => placed[leads[(need.RidesWith!, need.Group)]]! with { Need = need };
    }

    /// <summary>Jobs of one kind of day only: a day is either free or not, so the two kinds never share one.</summary>
    private static IEnumerable<(Choice Choice, LocalDate Day)> Gather(
        ImmutableArray<Choice> choices, ILookup<(string Id, TuppingGroup? Group), JobNeed> riders, HashSet<LocalDate> standing)
    {
        var origin = choices.Min(c => c.Need.Earliest);
        var stabs = choices.Select(c => new Stab(
            Number(c.Need.Earliest),
            Number(c.Need.Best),
            Number(c.Need.Latest),
            1 + riders[(c.Need.Id, c.Need.Group)].Count()));
        var allowed = choices.SelectMany(c => c.Days).Distinct().Order().Select(Number);
        var days = FewestDays.Choose([.. stabs], [.. allowed], standing.Select(Number).ToHashSet());
        return choices.Zip(days, (choice, day) => (choice, origin.PlusDays(day)));

        int Number(LocalDate day) => Period.DaysBetween(origin, day);
    }

    private readonly record struct Choice(int Index, JobNeed Need, DayKind Kind, ImmutableArray<LocalDate> Days);
}
