using System.Diagnostics;
using System.Text;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Flocks.Tests;

public class FlockBytesTests
{
    [Fact]
    public void Four_mebibytes_are_read_and_one_byte_more_is_refused()
    {
        var least = Samples.Text();
        var padded = least + "#" + new string('x', FlockReader.MostBytes - least.Length - 1);
        Assert.NotNull(FlockReader.Read("f.yaml", Encoding.UTF8.GetBytes(padded)).Flock);
        var found = Assert.Single(FlockReader.Read("f.yaml", Encoding.UTF8.GetBytes(padded + "x")).Diagnostics);
        Assert.Equal("FLK001", found.Code);
    }

    [Fact]
    public void A_byte_order_mark_changes_nothing()
    {
        var bytes = Encoding.UTF8.GetBytes(Samples.Text());
        var plain = FlockReader.Read("f.yaml", bytes);
        var marked = FlockReader.Read("f.yaml", [0xEF, 0xBB, 0xBF, .. bytes]);
        Assert.Equal(Dump.Of(plain.Flock!), Dump.Of(marked.Flock!));
        Assert.Equal(plain.Flock!.Ewes[0].Span, marked.Flock!.Ewes[0].Span);
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void Line_endings_change_nothing(string ending)
    {
        var text = Encoding.UTF8.GetString(Samples.Bytes("hollin-bank"));
        var plain = Samples.Flock(text);
        var other = Samples.Flock(text.ReplaceLineEndings(ending));
        Assert.Equal(Dump.Of(plain), Dump.Of(other));
        Assert.Equal(plain.Ewes.Select(e => e.Span), other.Ewes.Select(e => e.Span));
    }

    [Theory]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    public void Utf_16_is_named_with_its_mark_and_without(string encoding)
    {
        var bytes = Encoding.GetEncoding(encoding).GetBytes(Samples.Text());
        Assert.Equal("FLK002", Assert.Single(FlockReader.Read("f.yaml", bytes).Diagnostics).Code);
        byte[] marked = [.. Encoding.GetEncoding(encoding).GetPreamble(), .. bytes];
        Assert.Equal("FLK002", Assert.Single(FlockReader.Read("f.yaml", marked).Diagnostics).Code);
    }

    [Theory]
    [InlineData(new byte[] { 0x61, 0x0A, 0xC3, 0xA9, 0xE9, 0x20 }, 2, 2)] // Latin-1 after a good letter
    [InlineData(new byte[] { 0x61, 0xC0, 0x80 }, 1, 2)] // overlong
    [InlineData(new byte[] { 0x61, 0xED, 0xA0, 0x80 }, 1, 2)] // half of a pair
    [InlineData(new byte[] { 0x61, 0x62, 0xE2, 0x82 }, 1, 3)] // cut off at the end
    public void What_is_not_utf_8_is_refused_at_its_place(byte[] bytes, int line, int column)
    {
        var found = Assert.Single(FlockReader.Read("f.yaml", bytes).Diagnostics);
        Assert.Equal(("FLK003", line, column), (found.Code, found.Span.Line, found.Span.Column));
    }

    /// <summary>What is built to explode, or to keep a parser busy, at the largest size that is read at all.</summary>
    [Theory]
    [InlineData("[")]
    [InlineData("{")]
    [InlineData("- ")]
    [InlineData("? ")]
    [InlineData("a: [")]
    [InlineData("&a ")]
    [InlineData("'")]
    [InlineData("\n")]
    [InlineData("\t")]
    [InlineData("x")]
    [InlineData("#\n")]
    [InlineData("!")]
    [InlineData("a: &x [*x, *x]\n")]
    [InlineData("- a\n")]
    public void Repetition_is_not_worth_an_attackers_while(string unit)
    {
        var text = string.Concat(Enumerable.Repeat(unit, (FlockReader.MostBytes / unit.Length) - 1));
        var watch = Stopwatch.StartNew();
        var reading = FlockReader.Read("f.yaml", Encoding.UTF8.GetBytes(text));
        DiagnosticRenderer.Render(reading.Source, [.. reading.Diagnostics.Take(100)]);
        Assert.Null(reading.Flock);
        Assert.NotEmpty(reading.Diagnostics);
        // Seconds on any machine; a quadratic step would take hours.
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 60);
    }

    [Fact]
    public void Aliases_never_multiply()
    {
        const string Bomb = "a: &a [x, x, x]\nb: &b [*a, *a, *a]\nc: &c [*b, *b, *b]\nd: [*c, *c, *c]\n";
        Assert.Contains("FLK011", Samples.Codes(Bomb));
        Assert.Null(Samples.ReadText(Bomb).Flock);
    }
}
