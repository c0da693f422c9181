using PaperFlock.Languages;

namespace PaperFlock.Sheets.Tests.Translated;

/// <summary>What is painted and is no word of the language is a part of one: it was cut in two where a line was too short for it.</summary>
public sealed class WholeWordTests
{
    public static TheoryData<string, string, bool> Packs => new()
    {
        { "hollin-bank", "A4", true },
        { "hollin-bank", "A4", false },
        { "hollin-bank", "Letter", false },
        { "kanuka-flat", "Letter", true },
        { "kanuka-flat", "Letter", false },
        { "kanuka-flat", "A4", false },
    };

    [Theory]
    [MemberData(nameof(Packs))]
    public void No_word_of_English_is_cut_in_two(string flock, string paper, bool gloves)
    {
        var text = Set(Set(Composed.SampleText(flock), "paper", paper), "gloves", gloves ? "true" : "false");
        var composed = Composed.Of(text, flock == "hollin-bank" ? Composed.HollinBankDay : Composed.KanukaFlatDay, Language.English);
        Assert.Empty(PaintedWords.Foreign(composed.Pack, composed.Plan.Flock, PseudoPack.Pairs.Select(p => p.English)));
    }

    private static string Set(string text, string key, string value)
    {
        var lines = text.Split('\n');
        var line = Assert.Single(Enumerable.Range(0, lines.Length), i => lines[i].TrimStart().StartsWith(key + ":", StringComparison.Ordinal));
        lines[line] = $"  {key}: {value}";
        return string.Join('\n', lines);
    }
}
