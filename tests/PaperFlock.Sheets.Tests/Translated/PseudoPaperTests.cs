using PaperFlock.Sheets.Tests.PaperRules;

namespace PaperFlock.Sheets.Tests.Translated;

/// <summary>Words 40 % longer than the English ones still keep every rule of paper.</summary>
public sealed class PseudoPaperTests
{
    [Fact]
    public void Hollin_Bank_on_A4_keeps_every_paper_rule_in_long_words() => PaperCheck.Keeps(PseudoPack.HollinBank);

    [Fact]
    public void Kanuka_Flat_on_Letter_keeps_every_paper_rule_in_long_words() => PaperCheck.Keeps(PseudoPack.KanukaFlat);
}
