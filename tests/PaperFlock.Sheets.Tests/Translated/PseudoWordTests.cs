using PaperFlock.Pdf;

namespace PaperFlock.Sheets.Tests.Translated;

/// <summary>No word on paper is out of a translator's reach.</summary>
public sealed class PseudoWordTests
{
    [Fact]
    public void Every_word_of_Hollin_Bank_is_said_through_the_language_or_comes_from_the_flock_file() => AllSaid(PseudoPack.HollinBank);

    [Fact]
    public void Every_word_of_Kanuka_Flat_is_said_through_the_language_or_comes_from_the_flock_file() => AllSaid(PseudoPack.KanukaFlat);

    /// <summary>A plan in English under sheets in the other language: what the plan says must all be found.</summary>
    [Fact]
    public void A_word_that_is_said_without_the_language_is_found()
    {
        var english = Composed.HollinBank.Plan;
        var half = english with { Language = PseudoPack.Language };
        var pack = PackComposer.Compose(half, FontLibrary.Measurer, PackRequest.Everything);
        var found = PaintedWords.Foreign(pack, half.Flock, PseudoPack.Texts).ToArray();
        Assert.Contains(found, f => f.Contains("JOBS") && f.Contains("Shear in", StringComparison.Ordinal));
        Assert.Contains(found, f => f.Contains("CARD", StringComparison.Ordinal));
        Assert.All(["Singles", "Bedding", "gestation"], word => Assert.Contains(found, f => f.Contains(word, StringComparison.OrdinalIgnoreCase)));
    }

    [Fact]
    public void Every_text_is_accented_and_at_least_40_percent_longer()
    {
        Assert.All(PseudoPack.Pairs, pair => Assert.True(
            pair.Said.Count(char.IsLetter) >= 1.4 * pair.English.Count(char.IsLetter) || pair.English.Contains('`', StringComparison.Ordinal), pair.Said));
    }

    private static void AllSaid(Composed composed)
    {
        var foreign = PaintedWords.Foreign(composed.Pack, composed.Plan.Flock, PseudoPack.Texts).ToArray();
        Assert.True(foreign.Length == 0, $"{foreign.Length} words\n" + string.Join("\n", foreign.Select(f => f.Split(" in ", 2)).Select(f => f[0].Split([" ", "-", ":"], StringSplitOptions.None)[0] + " " + f[1]).Distinct().Take(300)));
    }
}
