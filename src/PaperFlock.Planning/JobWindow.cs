namespace PaperFlock.Planning;

/// <summary>Days on which a job may be done, counted from another day and negative before it; both ends included.</summary>
/// <param name="Best">In the window, though not always a day the keeper has.</param>
public readonly record struct JobWindow(int Earliest, int Best, int Latest)
{
    public static JobWindow Day(int day) => new(day, day, day);

    /// <summary>A window kept in its shape round another best day.</summary>
    public JobWindow MovedTo(int best) => new(Earliest + best - Best, best, Latest + best - Best);

    public bool Holds(int day) => Earliest <= day && day <= Latest;
}
