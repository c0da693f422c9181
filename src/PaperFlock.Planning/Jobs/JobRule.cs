using PaperFlock.Flocks;

namespace PaperFlock.Planning.Jobs;

/// <summary>One line of the trade's calendar: a window in days from an anchor.</summary>
/// <param name="Reason">Why the job is then, as the first half of a sentence.</param>
/// <param name="RidesWith">Id of the job of the same group whose day this one shares, whatever it is; null when it stands alone.</param>
internal sealed record JobRule(
    string Id,
    string Title,
    JobAnchor Anchor,
    JobWindow Window,
    bool Handled,
    string Reason,
    string Source,
    string? RidesWith = null)
{
    public bool IsFixed { get; private init; }

    /// <summary>A job that stands on its day whatever the keeper's week.</summary>
    public static JobRule Fixed(string id, string title, JobAnchor anchor, int day, bool handled, string reason, string source) =>
        new(id, title, anchor, new(day, day, day), handled, reason, source) { IsFixed = true };
}

/// <summary>Days from an anchor, negative before it, both ends included.</summary>
internal readonly record struct JobWindow(int Earliest, int Best, int Latest)
{
    /// <summary>A window kept in its shape round another best day.</summary>
    public JobWindow MovedTo(int best) => new(Earliest + best - Best, best, Latest + best - Best);
}
