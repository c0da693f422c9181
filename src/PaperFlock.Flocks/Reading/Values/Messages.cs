namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Words used by more than one section.</summary>
internal static class Words
{
    public static (string Word, IsoDayOfWeek Value)[] Weekdays { get; } =
    [
        ("Monday", IsoDayOfWeek.Monday),
        ("Tuesday", IsoDayOfWeek.Tuesday),
        ("Wednesday", IsoDayOfWeek.Wednesday),
        ("Thursday", IsoDayOfWeek.Thursday),
        ("Friday", IsoDayOfWeek.Friday),
        ("Saturday", IsoDayOfWeek.Saturday),
        ("Sunday", IsoDayOfWeek.Sunday),
    ];
}
