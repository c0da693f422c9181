using System.Text;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Packs.Screen;

/// <summary>A flock file as it stands on a screen, read and planned once for all that is asked of it.</summary>
/// <param name="name">What the file is called.</param>
/// <param name="today">Such as <c>2026-11-25</c>.</param>
public sealed class OpenFlock(string text, string name, string today)
{
    private readonly Lazy<(FlockReading Reading, PlannedFlock Planned)> _known = new(() =>
    {
        var day = ScreenDay.Day(today);
        var reading = PackMaker.Read(name, Encoding.UTF8.GetBytes(text), _ => day);
        return (reading, PackMaker.Plan(reading, day, forPaper: true));
    });

    public string Text => text;

    public string Name => name;

    /// <exception cref="PackRequestException">There are mistakes in it.</exception>
    public SeasonPlan Plan => Planned.Plan ?? throw new PackRequestException("there are mistakes in the flock: put them right first");

    internal LocalDate Today => ScreenDay.Day(today);

    internal FlockReading Reading => _known.Value.Reading;

    /// <summary>With mistakes in it there is no plan.</summary>
    internal PlannedFlock Planned => _known.Value.Planned;

    /// <summary>Whether it is that text, on that day.</summary>
    public bool Is(string thatText, string thatName, string thatToday) => (text, name, today) == (thatText, thatName, thatToday);
}
