namespace PaperFlock.Diagnostics.Tests;

public class DiagnosticRendererTests
{
    /// <summary>The line as it is shown, and the carets under it, without the margin.</summary>
    private static (string Line, string Carets) Drawn(string line, int column, int length) =>
        DiagnosticRenderer.Lines(new SourceText("f", line), [At(1, column, length)]).Select(l => l.Text[Math.Min(4, l.Text.Length)..]).ToArray() is [_, var shown, var carets, ..]
            ? (shown, carets)
            : throw new InvalidOperationException();

    private static Diagnostic At(int line, int column, int length, Severity severity = Severity.Error, string message = "this is wrong") =>
        new(severity, "FLK012", new SourceSpan(line, column, length), message, "put it right");

    [Fact]
    public void A_diagnostic_shows_place_line_caret_and_advice()
    {
        var source = new SourceText("flock.yaml", "season:\n  tup-in: 2026-09-31\n");
        Assert.Equal(
            """
            flock.yaml:2:11: error FLK012: this is wrong
                  tup-in: 2026-09-31
                          ^^^^^^^^^^
                put it right

            1 error

            """,
            DiagnosticRenderer.Render(source, [At(2, 11, 10)]));
    }

    [Fact]
    public void What_concerns_the_whole_file_has_no_line()
    {
        var diagnostic = new Diagnostic(Severity.Error, "FLK001", SourceSpan.WholeFile, "too large", "try another");
        Assert.Equal(
            "f.yaml: error FLK001: too large\n    try another\n\n1 error\n",
            DiagnosticRenderer.Render(new SourceText("f.yaml", ""), [diagnostic]));
    }

    [Fact]
    public void Of_one_kind_a_screenful_is_shown_and_then_how_many_more()
    {
        var source = new SourceText("f.yaml", string.Concat(Enumerable.Repeat("x\n", 40)));
        var alike = Enumerable.Range(1, 30).Select(line => At(line, 1, 1));
        var other = At(35, 1, 1, Severity.Warning) with { Code = "FLK090" };
        var text = DiagnosticRenderer.Render(source, [.. alike, other]);
        Assert.Equal([1, 2, 3, 4, 5, 6, 7, 8, 35], text.Split('\n').Where(l => l.StartsWith("f.yaml:", StringComparison.Ordinal)).Select(l => int.Parse(l.Split(':')[1], null)));
        Assert.EndsWith("\n\nFLK012: 22 more like these, from line 9 on\n30 errors, 1 warning\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_wrong_is_nothing_to_show() =>
        Assert.Equal("", DiagnosticRenderer.Render(new SourceText("f", ""), []));

    [Theory]
    [InlineData("key: \tword", 7, 4, "     \t^^^^")] // the tab is copied through
    [InlineData("羊羊 word", 4, 4, "     ^^^^")] // wide letters take two columns each
    [InlineData("e\u0301e\u0301 word", 6, 4, "   ^^^^")] // accents that stand apart take none
    [InlineData("🐑 word", 4, 4, "   ^^^^")] // one wide letter of two code units
    [InlineData("x 羊羊", 3, 2, "  ^^^^")] // and is underlined in full
    [InlineData("wo\u200Brd", 3, 1, "  ^")] // what nobody can see is drawn as a mark
    [InlineData("word", 1, 99, "^^^^")] // cut at the end of the line
    [InlineData("word", 5, 1, "    ^")] // just after the line
    [InlineData("", 1, 1, "^")]
    public void The_caret_stands_under_the_word(string line, int column, int length, string carets) =>
        Assert.Equal(carets, Drawn(line, column, length).Carets);

    [Theory]
    [InlineData(0)]
    [InlineData(150)]
    [InlineData(396)]
    public void A_long_line_is_shown_as_a_window_round_the_word(int before)
    {
        var line = new string('a', before) + "WORD" + new string('b', 396 - before);
        var (shown, carets) = Drawn(line, before + 1, 4);
        Assert.InRange(shown.Length, 120, 122);
        var at = carets.IndexOf('^', StringComparison.Ordinal);
        Assert.Equal("WORD", shown.Substring(at, 4));
        Assert.Equal(before > 0, shown.StartsWith('…'));
        Assert.Equal(before < 396, shown.EndsWith('…'));
    }

    [Fact]
    public void A_long_word_does_not_make_a_long_line()
    {
        var (shown, carets) = Drawn(new string('a', 5000), 1, 5000);
        Assert.InRange(shown.Length, 120, 122);
        Assert.InRange(carets.Length, 1, 122);
    }

    [Fact]
    public void A_window_never_cuts_a_letter_in_two()
    {
        var line = string.Concat(Enumerable.Repeat("🐑", 200));
        for (var column = 1; column <= line.Length; column++)
        {
            var shown = Drawn(line, column, 2).Line;
            Assert.DoesNotContain(shown.Trim('…').EnumerateRunes(), rune => rune.Value == 0xFFFD);
        }
    }

    [Fact]
    public void Control_characters_are_not_sent_to_the_terminal() => Assert.Equal("a\uFFFD[31m\uFFFDb", Drawn("a\u001b[31m\u202eb", 1, 1).Line);

    [Theory]
    [InlineData(1, 0, "1 error")]
    [InlineData(2, 1, "2 errors, 1 warning")]
    [InlineData(0, 3, "3 warnings")]
    public void The_summary_counts(int errors, int warnings, string summary) =>
        Assert.EndsWith(
            $"\n{summary}\n",
            DiagnosticRenderer.Render(new SourceText("f", "x"), [.. Enumerable.Repeat(At(1, 1, 1), errors), .. Enumerable.Repeat(At(1, 1, 1, Severity.Warning), warnings)]),
            StringComparison.Ordinal);

    [Fact]
    public void A_bag_is_in_the_order_of_the_file_errors_first_at_one_place()
    {
        var bag = new DiagnosticBag();
        Diagnostic[] inOrder =
        [
            new(Severity.Error, "FLK001", SourceSpan.WholeFile, "whole", ""),
            At(2, 3, 1, Severity.Error, "a"),
            At(2, 3, 1, Severity.Error, "b"),
            At(2, 3, 1, Severity.Warning),
            At(2, 10, 1),
            At(11, 1, 1),
        ];
        foreach (var diagnostic in inOrder.Reverse())
        {
            bag.Add(diagnostic);
        }

        Assert.Equal(inOrder.ToImmutableArray(), bag.ToSorted());
        Assert.True(bag.HasErrors);
    }

    [Fact]
    public void Warnings_alone_are_no_errors()
    {
        var bag = new DiagnosticBag();
        bag.Add(At(1, 1, 1, Severity.Warning));
        Assert.False(bag.HasErrors);
    }
}
