using NodaTime;
using NodaTime.TimeZones;

namespace PaperFlock.Cli;

/// <summary>What the computer and its terminal are set to: whether colour, borders and progress are wanted, and what time it keeps.</summary>
internal static class Terminals
{
    /// <summary>Plain text for a pipe, for <c>NO_COLOR</c> (no-color.org) and for a terminal that calls itself dumb.</summary>
    public static bool IsForPeople(bool redirected) =>
        !redirected
        && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
        && Environment.GetEnvironmentVariable("TERM") != "dumb";

    /// <returns>Null where the computer keeps a time that the tz database has no name for.</returns>
    public static string? HomeZone()
    {
        try
        {
            return DateTimeZoneProviders.Tzdb.GetSystemDefault().Id;
        }
        catch (DateTimeZoneNotFoundException)
        {
            return null;
        }
    }
}
