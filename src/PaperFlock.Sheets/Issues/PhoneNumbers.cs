using System.Text.RegularExpressions;

namespace PaperFlock.Sheets.Issues;

/// <summary>Tells what holds a telephone number, so that a record of what was printed holds none: those of the flock file, and whatever else looks like one in a note or a title.</summary>
internal sealed partial class PhoneNumbers(Flock flock)
{
    private readonly ImmutableArray<string> _given =
        [.. flock.Holding.Contacts.Select(c => c.Phone).Concat(flock.KeeperDays.Away.Select(a => a.Phone)).OfType<string>().Select(Wording.Tidy)];

    /// <summary>Tags look like numbers too.</summary>
    private readonly HashSet<string> _tags =
        [.. flock.Ewes.SelectMany(e => NineFigures().Matches(Wording.Tidy(e.Tag))).Select(m => m.Value)];

    /// <summary>The leaf with no number in it.</summary>
    public Leaf HiddenIn(Leaf leaf) => leaf with
    {
        Title = AreIn(leaf.Title) ? leaf.Label : leaf.Title,
        Rows = [.. leaf.Rows.Select(HiddenIn)],
    };

    private LeafRow HiddenIn(LeafRow row) =>
        new(HiddenIn(row.Key), [.. row.Cells.Select(cell => AreIn(cell.Words) ? cell with { Words = HiddenWords.Of(cell.Words) } : cell)]);

    private RowKey HiddenIn(RowKey key) => AreIn(key.Id) || AreIn(key.Name) ? key with { Id = HiddenWords.Of(key.Id), Name = string.Empty } : key;

    private bool AreIn(string words) =>
        _given.Any(number => words.Contains(number, StringComparison.Ordinal)) || NineFigures().Matches(words).Any(match => !_tags.Contains(match.Value));

    /// <summary>Nine or more with nothing but spaces and the usual marks between them; dates, places and amounts have fewer.</summary>
    [GeneratedRegex(@"\d(?:[\s()/-]{0,2}\d){8,}")]
    private static partial Regex NineFigures();
}
