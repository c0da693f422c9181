using PaperFlock.Flocks.Editing;
using PaperFlock.Flocks.Places;

namespace PaperFlock.Flocks.Drafting;

/// <summary>All that the first flock file says.</summary>
/// <param name="Place">Null where nobody has said where the sheep are: none is made up.</param>
/// <param name="CountryCode">ISO 3166; null when the time zone is nobody's.</param>
public sealed record FlockDraft(
    string Name,
    string? Keeper,
    Place? Place,
    string TimeZone,
    string? CountryCode,
    SeasonStart Start,
    ImmutableArray<DraftEwe> Ewes,
    Paper Paper)
{
    /// <summary>As the reader of flock files would have it.</summary>
    /// <param name="today">The day it is in a time zone; null holds nothing against the calendar.</param>
    public FlockReading Read(Func<DateTimeZone, LocalDate>? today = null) => FlockReader.Read("flock", Encoding.UTF8.GetBytes(FlockFileText.Of(this, "flock")), today);

    /// <summary>Why the reader would refuse it, in the reader's words: what may be answered is laid down in one place. Null where it would not.</summary>
    public string? WhyNot() => Read().Diagnostics.FirstOrDefault(d => d.Severity == Severity.Error) is { } wrong ? $"{wrong.Message}: {wrong.Advice}" : null;

    /// <summary>The groups the ewes are in, in the order they come, as YAML; none when the ewes name none.</summary>
    public ImmutableArray<string> Groups =>
        [.. Ewes.SelectMany(e => e.Lines).Where(l => l.Key == "group").Select(l => l.Value.ToYaml()).Distinct(StringComparer.Ordinal)];

    /// <summary>Of one ewe to stand in for all, so that a single answer can be tried on the reader before the others are known.</summary>
    public static FlockDraft Trial { get; } = new(
        "My flock", null, new Place(54, -2, null), "Europe/London", "GB", new SeasonStart(new LocalDate(2026, 11, 5), IsLambing: false), DraftEwe.Unnamed(1), Paper.A4);
}

/// <summary>The one date of a season that is chosen; the others follow.</summary>
/// <param name="IsLambing">The day the first lambs are wanted; else the day the tup goes in.</param>
public sealed record SeasonStart(LocalDate Day, bool IsLambing)
{
    /// <summary>What the reader takes too, for a file that does not say.</summary>
    private const int GestationDays = 147;

    private const int StayDays = 42;

    public LocalDate TupIn => IsLambing ? Day.PlusDays(-GestationDays) : Day;

    public LocalDate FirstLambs => TupIn.PlusDays(GestationDays);

    public LocalDate TupOut => TupIn.PlusDays(StayDays);

    /// <summary>
    /// Bonfire night for lambs on the first of April, as the saying has it; 5 April in the south, for lambs at the end of August.
    /// Common practice, no source. The first such day whose ewes are not yet being fed for lambing: after that there is nothing left to plan.
    /// </summary>
    public static SeasonStart Usual(bool southern, LocalDate today)
    {
        const int DaysWorthPlanning = 98;
        var day = southern ? new LocalDate(today.Year, 4, 5) : new LocalDate(today.Year, 11, 5);
        day = day.PlusYears(-1);
        while (day.PlusDays(DaysWorthPlanning) < today)
        {
            day = day.PlusYears(1);
        }

        return new SeasonStart(day, IsLambing: false);
    }
}

/// <summary>A ewe as she is written into a flock file: keys of the format with their values, in order, the tag first.</summary>
/// <param name="IsUnnamed">What stands for her tag is on no ear.</param>
public sealed record DraftEwe(ImmutableArray<(string Key, FlockValue Value)> Lines, bool IsUnnamed = false)
{
    /// <summary>How a line to write a tag on begins.</summary>
    public const string TagLine = "____________";

    /// <summary>More is a commercial flock, or a slip.</summary>
    public const int MostUnnamed = 2000;

    /// <summary>As many ewes without a tag as somebody typed.</summary>
    /// <returns>Null where that is no number of ewes.</returns>
    public static ImmutableArray<DraftEwe>? Counted(string typed) =>
        int.TryParse(typed.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is >= 1 and <= MostUnnamed ? Unnamed(count) : null;

    /// <summary>
    /// Ewes whose tags nobody has typed. Each has a line to write her tag on, which a card then shows large, and a number that tells
    /// her from the others: nothing on an ear looks like it.
    /// </summary>
    public static ImmutableArray<DraftEwe> Unnamed(int count)
    {
        var digits = count < 100 ? "00" : "000";
        return [.. Enumerable.Range(1, count).Select(n =>
            new DraftEwe([("tag", FlockValue.Text($"{TagLine} {n.ToString(digits, CultureInfo.InvariantCulture)}"))], IsUnnamed: true))];
    }
}
