namespace PaperFlock.Planning;

/// <summary>A job of one group, or of the whole flock, on its day.</summary>
/// <param name="Group">Null when it is the whole flock's.</param>
/// <param name="Anchor">The day its window is counted from; the job's own day where the flock file gives it.</param>
public sealed record Job(JobRule Rule, TuppingGroup? Group, LocalDate Anchor)
{
    public JobKind Kind => Rule.Kind;

    public bool Handled => Rule.Handled;

    public bool IsFixed => Rule.IsFixed;

    /// <summary>First day it is any use, included.</summary>
    public LocalDate Earliest => Anchor.PlusDays(Rule.Window.Earliest);

    /// <summary>The day the trade would choose with nothing in the way.</summary>
    public LocalDate Best => Anchor.PlusDays(Rule.Window.Best);

    /// <summary>Last day it is any use, included.</summary>
    public LocalDate Latest => Anchor.PlusDays(Rule.Window.Latest);

    /// <summary>Null when no day in the window can be had: see <see cref="NearestDay"/>.</summary>
    public LocalDate? Date { get; init; }

    public DayReason WhyThatDay { get; init; }

    /// <summary>For a job without a day, the nearest one outside the window that would do; null when there is none within a year.</summary>
    public LocalDate? NearestDay { get; init; }

    /// <summary>It is for those of the group that are likely to lamb in these days; null where it is for the whole group.</summary>
    public DateInterval? Batch { get; init; }

    /// <summary>Time to allow, for all the ewes; null when nobody says.</summary>
    public int? Minutes { get; init; }

    /// <summary>Where it goes on paper: its day, else the day it should have been.</summary>
    public LocalDate ShownOn => Date ?? Best;

    /// <summary>Days between one of its window and the best.</summary>
    internal int DaysOff(LocalDate day) => Math.Abs(Period.DaysBetween(Best, day));
}
