namespace PaperFlock.Flocks;

/// <param name="Free">Weekdays for jobs that need hours; never empty.</param>
/// <param name="Away">In date order.</param>
public sealed record KeeperDays(ImmutableArray<IsoDayOfWeek> Free, ImmutableArray<Absence> Away)
{
    public ImmutableArray<IsoDayOfWeek> Free { get; init; } = Require.NotEmpty(Free);

    public ImmutableArray<Absence> Away { get; init; } = Require.Ordered(Away, a => a.From);

    public bool IsFreeWeekday(LocalDate day) => Free.Contains(day.DayOfWeek);

    /// <summary>A free weekday on which the keeper is there.</summary>
    public bool IsFree(LocalDate day) => IsFreeWeekday(day) && AbsenceOn(day) is null;

    public Absence? AbsenceOn(LocalDate day) => Away.FirstOrDefault(a => a.From <= day && day <= a.To);
}

/// <summary>Days on which a sitter holds the pack; both ends are days away.</summary>
public sealed record Absence(LocalDate From, LocalDate To, string? Sitter, string? Phone, SourceSpan Span)
{
    public LocalDate To { get; init; } = Require.NotBefore(To, From);
}
