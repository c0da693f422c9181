using PaperFlock.Flocks.Reading;

namespace PaperFlock.Packs.Screen;

/// <summary>A flock file as it stands on a screen, read once for all that is asked of it, and planned once when the plan is asked for.</summary>
/// <param name="name">What the file is called.</param>
/// <param name="today">Such as <c>2026-11-25</c>.</param>
public sealed class OpenFlock(string text, string name, string today)
{
    private readonly Lazy<FlockReading> _reading = new(() => PackMaker.Read(name, Encoding.UTF8.GetBytes(text), _ => ScreenDay.Day(today)));

    private PlannedFlock? _planned;

    public string Text => text;

    public string Name => name;

    /// <exception cref="PackRequestException">There are mistakes in it.</exception>
    public SeasonPlan Plan => Planned.Plan ?? throw new PackRequestException("there are mistakes in the flock: put them right first");

    internal LocalDate Today => ScreenDay.Day(today);

    internal FlockReading Reading => _reading.Value;

    /// <summary>With mistakes in it there is no plan.</summary>
    internal PlannedFlock Planned => _planned ??= PackMaker.Plan(Reading, Today, forPaper: true);

    /// <summary>Whether it is that text, on that day.</summary>
    public bool Is(string thatText, string thatName, string thatToday) => (text, name, today) == (thatText, thatName, thatToday);
}
