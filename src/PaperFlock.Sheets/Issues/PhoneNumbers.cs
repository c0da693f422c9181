using System.Text.RegularExpressions;

namespace PaperFlock.Sheets.Issues;

/// <summary>Tells what holds a telephone number, so that a record of what was printed holds none: those of the flock file, and whatever else looks like one in a note or a title.</summary>
internal sealed partial class PhoneNumbers
{
    private const int LeastFigures = 9;

    private readonly ImmutableArray<string> _given;

    /// <summary>Tags look like numbers too.</summary>
    private readonly HashSet<string> _tags;

    /// <summary>Shorter words hold no number: most are empty, for a box to write in.</summary>
    private readonly int _shortest;

    public PhoneNumbers(Flock flock)
    {
        _given = [.. flock.Holding.Contacts.Select(c => c.Phone).Concat(flock.KeeperDays.Away.Select(a => a.Phone)).OfType<string>().Select(Wording.Tidy)];
        _tags = [.. flock.Ewes.SelectMany(e => NineFigures().Matches(Wording.Tidy(e.Tag))).Select(m => m.Value)];
        _shortest = _given.Select(number => number.Length).Append(LeastFigures).Min();
    }

    /// <summary>The leaf with no number in it.</summary>
    public Leaf HiddenIn(Leaf leaf) => leaf with
    {
        Title = AreIn(leaf.Title) ? leaf.Label : leaf.Title,
        Rows = [.. leaf.Rows.Select(HiddenIn)],
    };

    private LeafRow HiddenIn(LeafRow row) =>
        new(HiddenIn(row.Key), row.Cells.Any(cell => AreIn(cell.Words)) ? [.. row.Cells.Select(cell => AreIn(cell.Words) ? cell with { Words = HiddenWords.Of(cell.Words) } : cell)] : row.Cells);

    private RowKey HiddenIn(RowKey key) => AreIn(key.Id) || AreIn(key.Name) ? key with { Id = HiddenWords.Of(key.Id), Name = string.Empty } : key;

    private bool AreIn(string words) => words.Length >= _shortest
        && (_given.Any(number => words.Contains(number, StringComparison.Ordinal)) || NineFigures().Matches(words).Any(match => !_tags.Contains(match.Value)));

    /// <summary>Nine or more with nothing but spaces and the usual marks between them; dates, places and amounts have fewer.</summary>
    [GeneratedRegex(@"\d(?:[\s()/-]{0,2}\d){8,}")]
    private static partial Regex NineFigures();
}
