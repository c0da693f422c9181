namespace PaperFlock.Packs.Tests.PaperRules;

public sealed class KanukaFlatPdfTests
{
    [Theory]
    [InlineData("Letter", false, "long-edge")]
    [InlineData("Letter", true, "short-edge")]
    [InlineData("A4", true, "long-edge")]
    [InlineData("A4", false, "short-edge")]
    public void The_printed_file_keeps_every_rule(string paper, bool gloves, string duplex) =>
        PrintedCheck.Keeps(new PrintRun("kanuka-flat", paper, gloves, duplex));
}
