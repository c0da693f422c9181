using NodaTime;
using PaperFlock.Planning;
using PaperFlock.Planning.Text;
using PaperFlock.Sheets.Theme;

namespace PaperFlock.Sheets.Jobs;

/// <summary>One line of the jobs sheet: a job, or the same job of several groups on the same day.</summary>
/// <param name="GroupWords">" · Orchard, Paddock", or empty when it is the whole flock's.</param>
internal sealed record JobEntry(PlannedJob Job, string GroupWords)
{
    public LocalDate ShownOn => Job.ShownOn;

    public string Title => Job.Title;

    /// <summary>Why, and the last day it is any use where that is another day.</summary>
    public string WhyIn() => Block.Sentences(
        Job.Why,
        Job.Fixed || Job.Latest == Job.Date ? "" : $"Last useful day {DateText.Short(Job.Latest)}.");
}
