using PaperFlock.Sheets.Tests.PaperRules;

namespace PaperFlock.Packs.Tests.PaperRules;

internal static class PrintedCheck
{
    public static void Keeps(PrintRun run)
    {
        var broken = PdfRules.Broken(PrintedPack.Of(run));
        Assert.True(broken.IsEmpty, PaperCheck.Summary(broken));
    }
}
