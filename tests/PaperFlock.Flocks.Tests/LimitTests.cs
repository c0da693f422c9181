using System.Text;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Flocks.Tests;

/// <summary>What is too much is said so, and read no further.</summary>
public class LimitTests
{
    [Fact]
    public void A_thousand_mistakes_are_all_shown_and_one_more_ends_the_reading()
    {
        // Half of them found by the tree and half by the sections.
        var most = Mistakes(FlockReader.MostFound);
        Assert.Equal(FlockReader.MostFound, most.Length);
        Assert.DoesNotContain(most, d => d.Code == "FLK018");

        var more = Mistakes(FlockReader.MostFound + 1);
        Assert.Equal(FlockReader.MostFound + 1, more.Length);
        Assert.Equal(("FLK018", SourceSpan.WholeFile), (more[0].Code, more[0].Span));
        Assert.All(more[1..], d => Assert.Contains(d.Code, new[] { "FLK011", "FLK031" }));
    }

    private static Diagnostic[] Mistakes(int count)
    {
        var text = new StringBuilder(Samples.Text(ewes: "ewes:\n"));
        for (var i = 0; i < count; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"  - tag: {(i % 2 == 0 ? $"*a{i}" : $"ZZ {i}\n    scan: lots")}\n");
        }

        var reading = Samples.ReadText(text.ToString());
        Assert.Null(reading.Flock);
        return [.. reading.Diagnostics];
    }

    [Fact]
    public void A_list_may_be_as_long_as_it_may_and_no_longer()
    {
        Assert.Equal(FlockReader.LongestList, Samples.Flock(Ewes(FlockReader.LongestList)).Ewes.Length);
        var found = Assert.Single(Samples.ReadText(Ewes(FlockReader.LongestList + 1)).Diagnostics);
        Assert.Equal("FLK028", found.Code);
        Assert.Contains("- tag: ZZ 5000", Samples.ReadText(Ewes(FlockReader.LongestList + 1)).Source.Line(found.Span.Line), StringComparison.Ordinal);
    }

    private static string Ewes(int count) =>
        Samples.Text(ewes: $"ewes:\n{string.Concat(Enumerable.Range(0, count).Select(i => $"  - tag: ZZ {i.ToString(CultureInfo.InvariantCulture)}\n"))}");

    // The first bytes of each kind: ISO 32000-1, 7.5.2 (PDF); APPNOTE.TXT 6.3.10, 4.3.7 (ZIP); MS-CFB, 2.2; RTF 1.9.1; HTML; XML 1.0, 2.8.
    [Theory]
    [InlineData("%PDF-1.7\n%\u00E2\u00E3", "a PDF")]
    [InlineData("PK\u0003\u0004\u0014\u0000", "word processor or a spreadsheet")]
    [InlineData("\u00D0\u00CF\u0011\u00E0\u00A1", "word processor or a spreadsheet")]
    [InlineData("{\\rtf1\\ansi paperflock: 1}", "word processor")]
    [InlineData("<!DOCTYPE html>", "a web page")]
    [InlineData("<?xml version=\"1.0\"?>", "a web page")]
    public void A_file_of_another_kind_is_called_what_it_is(string begins, string kind)
    {
        var found = Assert.Single(FlockReader.Read("f.yaml", Encoding.Latin1.GetBytes(begins)).Diagnostics);
        Assert.Equal("FLK019", found.Code);
        Assert.Contains(kind, found.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1949-10-20")]
    [InlineData("2100-10-20")]
    public void Seasons_from_1950_to_2100_are_read(string tupIn) =>
        Assert.NotNull(Samples.ReadText(Samples.Text(season: $"season:\n  tup-in: {tupIn}\n")).Flock);

    [Theory]
    [InlineData("1948-12-31")]
    [InlineData("2102-01-01")]
    public void Years_before_and_after_are_slips(string tupIn) =>
        Assert.Equal(["FLK035"], Samples.Codes(Samples.Text(season: $"season:\n  tup-in: {tupIn}\n")));
}
