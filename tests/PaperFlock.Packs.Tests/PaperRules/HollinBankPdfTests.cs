namespace PaperFlock.Packs.Tests.PaperRules;

public sealed class HollinBankPdfTests
{
    [Theory]
    [InlineData("A4", true, "long-edge")]
    [InlineData("A4", false, "short-edge")]
    [InlineData("Letter", true, "short-edge")]
    [InlineData("Letter", false, "long-edge")]
    public void The_printed_file_keeps_every_rule(string paper, bool gloves, string duplex) =>
        PrintedCheck.Keeps(new PrintRun("hollin-bank", paper, gloves, duplex));
}
