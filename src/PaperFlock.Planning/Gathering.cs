namespace PaperFlock.Planning;

/// <summary>A day on which ewes are handled, and all that is done that day.</summary>
public sealed record Gathering(LocalDate Date, ImmutableArray<Job> Jobs)
{
    /// <returns>In date order.</returns>
    /// <param name="jobs">In date order.</param>
    internal static ImmutableArray<Gathering> Of(ImmutableArray<Job> jobs) =>
        [.. jobs.Where(j => j is { Handled: true, Date: not null }).GroupBy(j => j.Date!.Value, (day, on) => new Gathering(day, [.. on]))];
}
