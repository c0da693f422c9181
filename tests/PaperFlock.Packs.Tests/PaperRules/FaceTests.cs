using PaperFlock.Layout;
using PaperFlock.Sheets.Tests.PaperRules;

namespace PaperFlock.Packs.Tests.PaperRules;

/// <summary>The heights of letters that the paper rules reckon with, against the outlines in the file.</summary>
public sealed class FaceTests
{
    [Theory]
    [InlineData("EHTXZ", PageInk.CapitalOfEm)]
    [InlineData("147", PageInk.CapitalOfEm)]
    [InlineData("vxz", PageInk.XHeightOfEm)]
    public void Letters_are_as_high_as_the_rules_say(string letters, double ofEm)
    {
        var glyphs = PrintedPack.HollinBank.Sides.Where(s => !s.Side.IsPlanner).SelectMany(s => s.Page.Glyphs)
            .Where(g => letters.Contains(g.Character, StringComparison.Ordinal)).ToArray();
        foreach (var face in Enum.GetValues<Face>())
        {
            var heights = glyphs.Where(g => g.Style.Face == face).Select(g => g.Box.Height / g.Style.Size).ToArray();
            if (heights.Length > 0)
            {
                Assert.All(heights, h => Assert.Equal(ofEm, h, 0.006));
            }
        }
    }

    /// <summary>With a tenth of an em allowed for tails that reach out of their own width.</summary>
    [Fact]
    public void No_letter_rises_above_or_sinks_below_what_the_rules_say()
    {
        foreach (var side in PrintedPack.HollinBank.Sides)
        {
            var words = side.Page.Ink.Words;
            Assert.All(side.Page.Glyphs.Where(g => !g.IsBlank), g => Assert.Contains(words, w => w.All.Shrunk(-0.1 * g.Style.Size).Contains(g.Box)));
        }
    }
}
