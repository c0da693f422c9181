using CsCheck;

namespace PaperFlock.Diagnostics.Tests;

public class SourceTextTests
{
    [Theory]
    [InlineData("", 1)]
    [InlineData("a", 1)]
    [InlineData("a\n", 2)]
    [InlineData("a\r\nb", 2)]
    [InlineData("a\rb", 2)]
    [InlineData("a\n\rb", 3)]
    [InlineData("a\r\r\nb", 3)]
    // Editors do not break a line here, and the line number must be the one in the editor.
    [InlineData("a\u2028b\u0085c", 1)]
    public void Lines_end_as_in_an_editor(string text, int lines) =>
        Assert.Equal(lines, new SourceText("f", text).LineCount);

    [Theory]
    [InlineData("one\r\ntwo\r\n")]
    [InlineData("one\ntwo\n")]
    [InlineData("one\rtwo\r")]
    public void A_line_has_no_line_break(string text)
    {
        var source = new SourceText("f", text);
        Assert.Equal(["one", "two", ""], [source.Line(1), source.Line(2), source.Line(3)]);
    }

    [Theory]
    [InlineData(0, 2, 1, 1, 2)]
    [InlineData(5, 3, 2, 2, 2)] // cut at the end of the line
    [InlineData(4, 0, 2, 1, 1)] // never shorter than one
    [InlineData(7, 1, 2, 4, 1)] // on the line break itself
    [InlineData(8, 0, 3, 1, 1)] // the end of the text
    public void A_span_stays_on_its_first_line(int offset, int length, int line, int column, int spanned) =>
        Assert.Equal(new SourceSpan(line, column, spanned), new SourceText("f", "abc\nefg\n").SpanAt(offset, length));

    [Fact]
    public void Places_outside_the_text_are_a_fault_of_the_caller()
    {
        var source = new SourceText("f", "abc");
        Assert.Throws<ArgumentOutOfRangeException>(() => source.SpanAt(4, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => source.SpanAt(-1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => source.Line(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => source.Line(2));
    }

    [Fact]
    public void Every_character_is_found_again_through_its_span() =>
        Gen.String[Gen.Char["ab\r\n\té羊"], 0, 40].Sample(text =>
        {
            var source = new SourceText("f", text);
            for (var i = 0; i < text.Length; i++)
            {
                var found = source.TextOf(source.SpanAt(i, 1));
                Assert.Equal(text[i] is '\r' or '\n' ? "" : text[i].ToString(), found);
            }
        });
}
