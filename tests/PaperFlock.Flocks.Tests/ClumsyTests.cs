namespace PaperFlock.Flocks.Tests;

/// <summary>
/// What people type who are tired, paste from a document or copy from a spreadsheet: each is refused where the slip is, with
/// advice that says what to type, and never read as something else. The cases are ours, made from the ways YAML is misread.
/// </summary>
public class ClumsyTests
{
    private const string Holding = "holding:\n  name: Hollin Bank\n  location: {latitude: 54.46, longitude: -2.74}\n  time-zone: Europe/London\n";
    private const string Season = "season:\n  tup-in: 2026-10-20\n";

    /// <summary>A line of ewes where the file has its ewes, on line 9 and after.</summary>
    [Theory]
    [InlineData("  - tag ZZ 1\n    name: Dot", 9, 5, "FLK005", "write `tag: ZZ 1`")]
    [InlineData("  - tag:ZZ 1\n    name: Dot", 9, 5, "FLK005", "put a space after the colon: `tag: ZZ 1`")]
    [InlineData("  - tag\uFF1A ZZ 1\n    name: Dot", 9, 8, "FLK005", "write `:` and a space")]
    [InlineData("  - tag = ZZ 1\n    name: Dot", 9, 5, "FLK005", "write `tag: ZZ 1`")]
    [InlineData("  - tag: ZZ 1\n     name: Dot", 10, 6, "FLK005", "begin `name` straight below")]
    [InlineData("  - tag: ZZ 1\n    name: 'Dot's'", 10, 15, "FLK005", "put double quotes round")]
    [InlineData("  - tag: ZZ 1\n    note: careful: kicks", 10, 18, "FLK005", "put quotes round text that holds a colon")]
    [InlineData("  * tag: ZZ 1", 9, 3, "FLK005", "a dash and a space")]
    [InlineData("  \u2013 tag: ZZ 1", 9, 3, "FLK024", "`-`, not `\u2013`")]
    [InlineData("  \u2022 tag: ZZ 1", 9, 3, "FLK024", "`-`, not `\u2022`")]
    [InlineData("  -tag: ZZ 1", 9, 3, "FLK024", "put a space after the dash: `- tag: \u2026`")]
    [InlineData("\u00A0\u00A0- tag: ZZ 1", 9, 1, "FLK004", "type the spaces of this line again")]
    [InlineData("  -\u00A0tag: ZZ 1", 9, 4, "FLK004", "type the spaces of this line again")]
    [InlineData("  - tag:\u00A0ZZ 1", 9, 9, "FLK004", "type the spaces of this line again")]
    [InlineData("  - tag: ZZ 1\n  \u200B  name: Dot", 10, 3, "FLK004", "type the spaces of this line again")]
    [InlineData("  - tag: \u201CZZ 1\u201D", 9, 10, "FLK044", "`\"ZZ 1\"`")]
    [InlineData("  - tag: \u00ABZZ 1\u00BB", 9, 10, "FLK044", "`\"ZZ 1\"`")]
    [InlineData("  - {tag: ZZ 1, note: quiet, but quick}", 9, 30, "FLK020", "`\"quiet, but quick\"`")]
    [InlineData("  - {tag: ZZ 1, condition: 2,5}", 9, 30, "FLK020", "`2.5`")]
    [InlineData("  - {tag: ZZ 1, weight: 72,5 kg}", 9, 28, "FLK020", "`72.5 kg`")]
    [InlineData("  - ZZ 1", 9, 5, "FLK023", "`{tag: ZZ 1}`")]
    [InlineData("  - tag: ZZ 1\n    scan: twins", 10, 11, "FLK031", "write `2`")]
    [InlineData("  - tag: ZZ 1\n    scan: Empty", 10, 11, "FLK031", "write `0`")]
    [InlineData("  - tag: ZZ 1\n    scan: 3 lambs", 10, 11, "FLK031", "write `3`")]
    [InlineData("  - tag: ZZ 1\n    scan: \uFF12", 10, 11, "FLK031", "write `2`")]
    [InlineData("  - tag: ZZ 1\n    scan: twelve", 10, 11, "FLK031", "in figures")]
    [InlineData("  - tag: ZZ 1\n    condition: 2\u00BD", 10, 16, "FLK031", "write `2.5`")]
    [InlineData("  - tag: ZZ 1\n    marks: 2026-10-25", 10, 12, "FLK024", "`marks: [2026-10-25]`")]
    public void A_slip_among_the_ewes_is_found_where_it_is(string ewes, int line, int column, string code, string advice) =>
        Refused($"paperflock: 1\n{Holding}{Season}ewes:\n{ewes}\n", line, column, code, advice);

    [Theory]
    [InlineData("54.46N", "-2.74", 4, 24, "write `54.46`")]
    [InlineData("54.46", "2.74 W", 4, 42, "write `-2.74`")]
    [InlineData("54.46", "\u22122.74", 4, 42, "write `-2.74`")]
    [InlineData("54\u00B027'36\"N", "-2.74", 4, 24, "write `54.46`")]
    [InlineData("54\u00B061'00\"N", "-2.74", 4, 24, "in figures")]
    [InlineData("91S", "-2.74", 4, 24, "in figures")]
    public void Degrees_of_the_compass_are_put_in_figures(string latitude, string longitude, int line, int column, string advice) =>
        Refused(
            $"paperflock: 1\n{Holding.Replace("54.46", latitude, StringComparison.Ordinal).Replace("-2.74", longitude, StringComparison.Ordinal)}{Season}{Samples.Ewes}",
            line, column, "FLK031", advice);

    [Theory]
    [InlineData("Tue 20 Oct 2026", "write `2026-10-20`, which is a Tuesday")]
    [InlineData("Monday, 20 October 2026", "write `2026-10-20`, which is a Tuesday")]
    [InlineData("2026-10-20T00:00:00Z", "write `2026-10-20`")]
    [InlineData("20/10/2026 00:00", "write `2026-10-20`")]
    [InlineData("2026-1O-20", "write `2026-10-20`")]
    [InlineData("26-10-20", "write `2026-10-20` if you mean Tuesday 20 October 2026, or `2020-10-26` if you mean Monday 26 October 2020")]
    [InlineData("26-10-26", "write `2026-10-26`")]
    [InlineData("40-13-26", "year, month and day in figures")]
    [InlineData("20/10/26", "write `2026-10-20`")]
    [InlineData("10/8/26", "write `2026-08-10` if you mean Monday 10 August 2026, or `2026-10-08` if you mean Thursday 8 October 2026")]
    [InlineData("20 Oct 26", "write `2026-10-20`")]
    [InlineData("0026-10-20", "write the year in four figures, such as `2026-10-20`")]
    [InlineData("46315", "a spreadsheet counts days")]
    [InlineData("20 Oct", "year, month and day in figures")]
    public void A_date_in_another_form_is_put_right(string date, string advice) =>
        Refused($"paperflock: 1\n{Holding}season:\n  tup-in: {date}\n{Samples.Ewes}", 7, 11, "FLK036", advice);

    [Theory]
    [InlineData("season\n  tup-in: 2026-10-20\n", 6, 1, "FLK005", "write `season:`")]
    [InlineData("season:\n  tup-in 2026-10-20\n", 7, 3, "FLK023", "`tup-in: 2026-10-20`")]
    [InlineData("season:\n  tup-in = 2026-10-20\n", 7, 3, "FLK023", "`tup-in: 2026-10-20`")]
    [InlineData("season:\n  tup-in:2026-10-20\n", 7, 3, "FLK023", "`tup-in: 2026-10-20`")]
    public void A_forgotten_colon_is_found_on_its_own_line(string season, int line, int column, string code, string advice) =>
        Refused($"paperflock: 1\n{Holding}{season}{Samples.Ewes}", line, column, code, advice);

    [Fact]
    public void Spaces_of_other_kinds_inside_text_are_text()
    {
        var ewe = Samples.Flock($"paperflock: 1\n{Holding}{Season}ewes:\n  - tag: ZZ\u00A01\n    note: see:\u00A0\u201Cthe other\u201D").Ewes[0];
        Assert.Equal("ZZ\u00A01", ewe.Tag);
        Assert.Equal("see:\u00A0\u201Cthe other\u201D", ewe.Note);
    }

    private static void Refused(string text, int line, int column, string code, string advice)
    {
        var reading = Samples.ReadText(text);
        Assert.Null(reading.Flock);
        var found = Assert.Single(reading.Diagnostics, d => d.Code == code);
        Assert.Equal((line, column), (found.Span.Line, found.Span.Column));
        Assert.Contains(advice, found.Advice, StringComparison.Ordinal);
    }
}
