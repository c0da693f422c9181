using System.Text;
using PaperFlock.Printing.Finishing;

namespace PaperFlock.Printing.Tests;

/// <summary>Against the content stream syntax of ISO 32000-1, 7.2 and 7.8.2 (from memory).</summary>
public sealed class GrayContentTests
{
    [Theory]
    [InlineData("", "")]
    [InlineData("0 0 0 rg", "0 g")]
    [InlineData("0 0 0 RG 0 0 0 rg\n/G3 gs\n", "0 G 0 g\n/G3 gs\n")]
    [InlineData("q\n.5 .5 .5\trg\r\n1 0 0 -1 0 595 cm", "q\n.5 g\r\n1 0 0 -1 0 595 cm")]
    [InlineData("BT (1 0 0 rg) Tj (a\\)1 0 0 rg(b) c) Tj ET", "BT (1 0 0 rg) Tj (a\\)1 0 0 rg(b) c) Tj ET")]
    [InlineData("<0012> Tj 0 0 0 rg<00> Tj", "<0012> Tj 0 g<00> Tj")]
    [InlineData("/rg gs /RG0 gs 10 20 m", "/rg gs /RG0 gs 10 20 m")]
    [InlineData("[(rg)-3(RG)] TJ", "[(rg)-3(RG)] TJ")]
    public void Black_is_written_as_one_grey(string content, string expected)
    {
        using var output = new MemoryStream();
        GrayContent.Rewrite(Encoding.Latin1.GetBytes(content), output);
        Assert.Equal(expected, Encoding.Latin1.GetString(output.ToArray()));
    }

    [Theory]
    [InlineData("1 0 0 rg")]
    [InlineData("0 0 .5 RG")]
    [InlineData("0 0 0 rg 0 1 0 rg")]
    public void A_colour_is_our_bug(string content)
        => Assert.Throws<InvalidOperationException>(() => GrayContent.Rewrite(Encoding.Latin1.GetBytes(content), Stream.Null));
}
