namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>What is set, and over what.</summary>
internal static class Type
{
    private const double Apart = 0.25;
    private const double Clear = 0.4;

    public static IEnumerable<string> TooSmall(SideInPack side) => side.Ink.Words
        .Where(w => w.Style.Size < (!side.IsControlLine(w) ? 9 : side.IsCards ? 7.5 : 8.5) - 0.001)
        .Select(w => $"“{w.Text}” is {w.Style.Size:0.0} pt");

    public static IEnumerable<string> Overlapping(SideInPack side) => Overlapping(side.Ink);

    public static IEnumerable<string> Overlapping(PageInk ink)
    {
        var words = ink.Words.OrderBy(w => w.Core.Top).ToArray();
        for (var i = 0; i < words.Length; i++)
        {
            var area = words[i].Core.Shrunk(Apart);
            for (var j = i + 1; j < words.Length && words[j].Core.Top < area.Bottom; j++)
            {
                if (area.Overlaps(words[j].Core.Shrunk(Apart)))
                {
                    yield return $"“{words[i].Text}” and “{words[j].Text}”";
                }
            }
        }
    }

    /// <summary>A ewe that has lambed is struck through on purpose.</summary>
    public static IEnumerable<string> Crossed(SideInPack side)
    {
        var struck = side.Plan.Ewes.Where(e => e.Standing == Planning.Standing.Lambed).SelectMany(e => new[] { e.Ewe.Name ?? "no name", e.Ewe.Tag }).ToArray();
        return Crossed(side.IsDue ? side.Ink with { Words = side.Ink.Words.RemoveAll(w => struck.Any(s => s.Contains(w.Text.Trim(), StringComparison.Ordinal))) } : side.Ink);
    }

    public static IEnumerable<string> Crossed(PageInk ink)
    {
        foreach (var words in ink.Words)
        {
            var area = words.Capitals.Shrunk(Clear);
            var over = ink.Strokes.Where(s => s.Crosses(area)).Select(s => s.Area).Concat(ink.Fills.Where(area.Overlaps)).ToArray();
            if (over.Length > 0)
            {
                yield return $"“{words.Text}” from {area.Left:0}, {area.Top:0} to {area.Right:0}, {area.Bottom:0} pt, by ink from {over[0].Left:0}, {over[0].Top:0} to {over[0].Right:0}, {over[0].Bottom:0} pt";
            }
        }
    }
}
