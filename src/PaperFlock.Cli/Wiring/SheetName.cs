using System.Collections.Immutable;

namespace PaperFlock.Cli.Wiring;

/// <summary>A sheet as the command line calls it.</summary>
/// <param name="Word">What the user types.</param>
/// <param name="Code">The page code it is printed under; typing that does as well.</param>
internal sealed record SheetName(string Word, string Code)
{
    /// <summary>In binding order.</summary>
    public static ImmutableArray<SheetName> All { get; } =
    [
        new("register", "REG"),
        new("planner", "WALL"),
        new("jobs", "JOBS"),
        new("feed", "FEED"),
        new("log", "LOG"),
        new("cards", "CARD"),
    ];

    public static SheetName? Find(string typed) =>
        All.FirstOrDefault(s => string.Equals(s.Word, typed, StringComparison.OrdinalIgnoreCase)
            || string.Equals(s.Code, typed, StringComparison.OrdinalIgnoreCase));
}
