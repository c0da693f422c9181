namespace PaperFlock.Cli;

/// <summary>Whether colour, borders and progress are wanted.</summary>
internal static class Terminals
{
    /// <summary>Plain text for a pipe, for <c>NO_COLOR</c> (no-color.org) and for a terminal that calls itself dumb.</summary>
    public static bool IsForPeople(bool redirected) =>
        !redirected
        && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
        && Environment.GetEnvironmentVariable("TERM") != "dumb";
}
