using CsCheck;
using PaperFlock.Layout.Breaking;
using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pieces;
using PaperFlock.Layout.Tests.Fakes;
using static PaperFlock.Layout.Tests.Fakes.Make;

namespace PaperFlock.Layout.Tests.Breaking;

/// <summary>Widths are in characters of 6 pt; a bar shows where a line ends.</summary>
public class LineBreakingTests
{
    private const string NoBreakSpace = "\u00A0";
    private const string NarrowNoBreakSpace = "\u202F";
    private const string ThinSpace = "\u2009";

    public static TheoryData<string, int, string, string> Cases => new()
    {
        { "one two three", 13, "one two three", "a line that is exactly full" },
        { "one two three", 12, "one two|three", "breaks at a space, which is not printed" },
        { "one two three", 7, "one two|three", "the space at the end does not count" },
        { "one two three", 3, "one|two|thr|ee", "a word longer than the line is broken between characters" },
        { "a  b", 4, "a  b", "spaces inside a line are kept as they are" },
        { "one   two", 5, "one|two", "however many, none begin the next line" },
        { "  one", 5, "  one", "a paragraph may begin with spaces" },
        { "  one", 4, "one", "unless they push the first word off the line" },
        { "one ", 3, "one", "spaces at the very end are dropped" },
        { "one\ttwo", 9, "one two", "a tab is a space" },
        { "one\ntwo", 20, "one|two", "a line feed starts a line" },
        { "one\r\ntwo\rthree", 20, "one|two|three", "whatever the system calls a line feed" },
        { "one\n\ntwo", 20, "one||two", "two leave an empty line" },
        { "one\n", 20, "one", "one at the end starts no line, nothing follows it" },
        { "\none", 20, "|one", "one at the start leaves an empty line" },
        { "well-known", 6, "well-|known", "after a hyphen" },
        { "ewe/lamb", 5, "ewe/|lamb", "after a slash" },
        { "well\u2010known", 6, "well\u2010|known", "after the hyphen that is only a hyphen" },
        { "-minus x", 6, "-minus|x", "never after a hyphen that begins a word" },
        { "well\u2011known x", 10, "well\u2011known|x", "never after a no-break hyphen" },
        { "in 2026-09-30", 10, "in|2026-09-30", "never between a hyphen and a digit: UAX 14, LB25" },
        { "give 1/2 bag", 7, "give|1/2 bag", "never between a slash and a digit: UAX 14, LB25" },
        { $"give 5{NoBreakSpace}kg now", 7, $"give|5{NoBreakSpace}kg|now", "never at a no-break space: UAX 14, GL" },
        { $"give 5{NarrowNoBreakSpace}kg now", 7, $"give|5{NarrowNoBreakSpace}kg|now", "nor at a narrow one: UAX 14, GL" },
        { $"one{ThinSpace}two", 5, "one|two", "at a thin space in ordinary words: UAX 14, BA" },
        { $"one{ThinSpace}two", 7, $"one{ThinSpace}two", "which is kept where it does not break" },
        { "abcdefghij kl", 4, "abcd|efgh|ij|kl", "words go on after the end of a broken one" },
        { "abcdefghi kl", 5, "abcde|fghi|kl", "on its line only if they fit" },
        { "abcdefgh kl", 6, "abcdef|gh kl", "as here" },
        { "x abcdefgh", 4, "x|abcd|efgh", "a word too long for a line begins one" },
        { "cafe\u0301s", 4, "cafe\u0301|s", "a letter and its accent stay together: UAX 29" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Lines_break_where_they_should(string words, int characters, string expected, string why)
    {
        // The accent is a character of its own to the fake measurer.
        var width = 6 * (characters + words.Count(letter => letter == '\u0301'));

        Assert.True(expected == Broken([new Run(words, Ten)], width), $"{why}: {Broken([new Run(words, Ten)], width)}");
    }

    public static TheoryData<string, int, string, string> RunCases => new()
    {
        { "for [ZZ 123 456] now", 10, "for|[ZZ 123 456]|now", "a whole run has no break at its spaces" },
        { "for [ZZ-a/b c] now", 8, "for|[ZZ-a/b c]|now", "nor at its hyphens and slashes" },
        { "[a\u2009b] c", 3, "[a\u2009b]|c", "nor at a thin space" },
        { "([ZZ 1]), then", 8, "([ZZ 1]),|then", "what touches it stays with it" },
        { "ewe-[b] c", 4, "ewe-|[b] c", "a line may break after a hyphen before it" },
        { "ewe-[1] c", 6, "ewe-[1]|c", "unless a digit follows" },
        { "abcdef[gh]", 4, "abcd|ef[gh]", "a word too long is broken beside it, not in it" },
    };

    [Theory]
    [MemberData(nameof(RunCases))]
    public void Whole_runs_are_never_broken(string marked, int characters, string expected, string why)
    {
        // Brackets in the case mark the whole run and are not set.
        var parts = marked.Split('[', ']');
        var runs = parts.Select((part, i) => new Run(part, Ten, Whole: i % 2 == 1)).ToArray();
        var actual = Broken(runs, 6 * characters);

        Assert.True(expected.Replace("[", "", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal) == actual, $"{why}: {actual}");
    }

    [Fact]
    public void A_whole_run_wider_than_the_box_says_what_it_needs() => Assert.Equal(
        "tag: word “ZZ 123 456” needs 60.0 pt, has 54.0 pt",
        Complaint(new Text([new Run("ewe ", Ten), new Run("ZZ 123 456", Ten, Whole: true)]) { Name = "tag" }, 54, 100));

    [Fact]
    public void A_box_narrower_than_a_letter_says_so() =>
        Assert.Equal("word “e” needs 6.0 pt, has 5.0 pt", Complaint(Words("ewe"), 5, 100));

    [Fact]
    public void A_name_of_forty_letters_flows() =>
        Assert.Equal("Llanfairpw|llgwyngyll|gogerychwy|rndrobwlll", Broken([new Run("Llanfairpwllgwyngyllgogerychwyrndrobwlll", Ten)], 60));

    [Fact]
    public void Emoji_and_other_pairs_of_characters_are_not_cut_in_half() =>
        Assert.Equal("🐑|🐑", Broken([new Run("🐑🐑", Ten)], 15));

    [Fact]
    public void Each_run_is_one_item_a_line_with_its_spaces_in_it() => Expect.Items(
        PieceOf(new Text([new Run("The ewe ", Ten), new Run("ZZ 7", Bold), new Run(" is due and she", Ten)]), 120),
        """
        text 0 9.25 48 The ewe
        text 48 9.25 24 ZZ 7
        text 72 9.25 42  is due
        text 0 21.75 42 and she
        """);

    [Fact]
    public void Runs_without_words_leave_no_items() => Expect.Items(
        PieceOf(new Text([new Run("", Bold), new Run("a", Ten), new Run("", Bold), new Run("b", Bold)])),
        """
        text 0 9.25 6 a
        text 6 9.25 6 b
        """);

    /// <summary>For whoever has it read out: the space is not printed, but two words are still two.</summary>
    [Theory]
    [InlineData("count the ewes", 60, "count the|ewes", "10")]
    [InlineData("count the\newes", 200, "count the|ewes", "10")]
    [InlineData("wintergreen", 42, "winterg|reen", "00")]
    [InlineData("back-quarter", 45, "back-|quarter", "00")]
    [InlineData("one two ", 100, "one two", "0")]
    public void A_space_follows_where_a_line_was_broken_at_one(string words, double width, string lines, string follows)
    {
        var placement = Assert.IsType<Placement.Fits>(Words(words).Place(new Space(width, 1000, 1000), Measurer()));
        var items = placement.Piece.Items.Cast<TextItem>().ToArray();
        Assert.Equal(lines, string.Join('|', items.Select(item => item.Text)));
        Assert.Equal(follows, string.Concat(items.Select(item => item.SpaceFollows ? '1' : '0')));
    }

    private static string Broken(IEnumerable<Run> runs, double width)
    {
        var broken = LineBreaker.Break([.. runs], width, Measurer());
        Assert.Null(broken.TooWide);
        Assert.All(broken.Lines, line => Assert.True(line.Width <= width + Space.Epsilon));
        return string.Join('|', broken.Lines.Select(line => string.Concat(line.Parts.Select(part => part.Text))));
    }
}
