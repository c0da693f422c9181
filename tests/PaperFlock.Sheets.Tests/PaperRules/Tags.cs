using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>How ewes are told from each other.</summary>
internal static class Tags
{
    public static IEnumerable<string> NotWholeOrNotMono(SideInPack side)
    {
        var tags = side.Plan.Ewes.Select(e => e.Ewe.Tag).ToHashSet(StringComparer.Ordinal);
        var codes = SideInPack.AllSheets(side.Pack).SelectMany(s => s.Sides.Select(p => p.Label).Append(s.Code)).ToHashSet(StringComparer.Ordinal);
        // Two classes of ewes may share a side.
        codes.UnionWith(side.Plan.Feeding.Charts.Select(c => c.Code).Append(Planning.FeedCodes.Lambed));
        foreach (var words in side.Ink.Words)
        {
            var said = words.Text.Trim();
            // Beside each name on the roll.
            var isEnd = side.Sheet.Kind is "handover" or "register" && tags.Any(t => t.Replace(' ', '-').EndsWith(said, StringComparison.Ordinal));
            if (words.IsMono && !isEnd && !tags.Contains(said) && !codes.Contains(said) && !side.IsControlLine(words))
            {
                yield return $"“{said}” is mono but no whole tag, page code or control line";
            }

            if (!words.IsMono && HoldsATag(said, tags))
            {
                yield return $"“{said}” has a tag that is not mono";
            }
        }
    }

    public static IEnumerable<string> WithoutName(SideInPack side)
    {
        // On its roll stand ends of tags, and one may be all of another's.
        if (side.Sheet.Kind == "register")
        {
            yield break;
        }

        var ewes = side.Plan.Ewes.Select(e => e.Ewe).ToDictionary(e => e.Tag, StringComparer.Ordinal);
        foreach (var words in side.Ink.Words.Where(w => w.IsMono))
        {
            if (ewes.GetValueOrDefault(words.Text.Trim()) is { Name: { } name } ewe && !side.Ink.Words.Any(w => Names(w, name) && IsBeside(w, words, side)))
            {
                yield return $"{ewe.Tag} stands without {name}";
            }
        }
    }

    /// <summary>A tag of one or two characters, such as "7", may be a figure of anything.</summary>
    private static bool HoldsATag(string said, HashSet<string> tags) =>
        tags.Any(t => t.Length > 3 && said.Replace('\u00a0', ' ').Contains(t, StringComparison.Ordinal));

    /// <summary>A long name is broken over lines: its beginning is enough.</summary>
    private static bool Names(Words words, string name)
    {
        var said = words.Text.Trim();
        return !words.IsMono && said.Length > 0 && (name.StartsWith(said, StringComparison.Ordinal) || said.StartsWith(name, StringComparison.Ordinal));
    }

    private static bool IsBeside(Words name, Words tag, SideInPack side)
    {
        var paper = side.Ink.Paper;
        var sameCard = !side.IsCards || (Half(name.Core.Left, paper.Width) == Half(tag.Core.Left, paper.Width) && Half(name.Baseline, paper.Height) == Half(tag.Baseline, paper.Height));
        return sameCard && Math.Abs(name.Baseline - tag.Baseline) <= Mm(22);
    }

    private static bool Half(double at, double whole) => at < whole / 2;
}
