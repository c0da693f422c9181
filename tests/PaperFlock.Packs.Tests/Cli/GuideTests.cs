using PaperFlock.Cli;
using PaperFlock.Sheets;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>The leaf that says how to use a pack.</summary>
public sealed class GuideTests
{
    [Theory]
    [InlineData("A4", "how-to-use-this-pack.pdf")]
    [InlineData("Letter", "how-to-use-this-pack-Letter.pdf")]
    public void It_is_one_leaf_that_names_every_sheet_there_is(string paper, string file)
    {
        using var bench = new Workbench();
        var outcome = bench.Run("guide", "--paper", paper);
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        Assert.Equal([file], bench.Everything());
        using var pdf = new PackPdf(bench.PathOf(file));
        Assert.Equal(2, pdf.Pages);
        Assert.Equal("DuplexFlipLongEdge", pdf.Duplex);
        Assert.All(PackSheets.All, sheet => Assert.Contains(sheet.Code, pdf.Texts[0], StringComparison.Ordinal));
    }

    [Fact]
    public void It_is_the_same_bytes_every_time()
    {
        using var bench = new Workbench();
        bench.Run("guide", "--out", "one");
        bench.Run("guide", "--out", "other");
        Assert.Equal(File.ReadAllBytes(bench.PathOf("one/how-to-use-this-pack.pdf")), File.ReadAllBytes(bench.PathOf("other/how-to-use-this-pack.pdf")));
    }
}
