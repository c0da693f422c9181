namespace PaperFlock.Languages.Tests;

/// <summary>The format is that of the GNU gettext manual, "The Format of PO Files".</summary>
public sealed class PoReaderTests
{
    [Fact]
    public void Comments_escapes_and_strings_over_several_lines_are_read()
    {
        var language = Po.Language(
            """
            # said by the translator
            #. said by the programmer
            #: src/File.cs
            msgid ""
            "help: ring one\n"
            "none \"or\" hand"
            msgstr "HELP:\n"
              "A \\ B"

            #~ msgid "no longer used"
            #~ msgstr "GONE"
            """.ReplaceLineEndings("\r\n"));
        Assert.Equal("HELP:\nA \\ B", language.Say("help: ring one\nnone \"or\" hand"));
    }

    [Theory]
    [InlineData("#, fuzzy\nmsgid \"Ewes\"\nmsgstr \"SEWE\"\n")]
    [InlineData("msgid \"Ewes\"\nmsgstr \"\"\n")]
    [InlineData("msgid \"Ewes\"\nmsgid_plural \"{0} Ewes\"\nmsgstr[0] \"SEWE\"\nmsgstr[1] \"\"\n")]
    public void A_guess_and_an_unfinished_entry_are_not_used_and_count_as_missing(string entry)
    {
        var catalogue = Po.Read(entry);
        Assert.Empty(catalogue.Diagnostics);
        Assert.Equal("Ewes", catalogue.Language!.Say("Ewes"));
        Assert.Equal(2, catalogue.MissingOf(Po.Read("msgid \"Ewes\"\nmsgstr \"\"\n\nmsgid \"Tups\"\nmsgstr \"\"\n")));
    }

    [Fact]
    public void Only_the_entry_behind_the_mark_is_a_guess() =>
        Assert.Equal("TWRD", Po.Language("#, fuzzy\nmsgid \"Ewes\"\nmsgstr \"SEWE\"\n\nmsgid \"Tups\"\nmsgstr \"TWRD\"\n").Say("Tups"));

    /// <summary>The header has seven lines, so entries begin in line 7.</summary>
    [Theory]
    [InlineData("msgid \"{0} ewes\"\nmsgstr \"SEWE\"\n", "8:8 WRD009 the holes are none, and should be {0}")]
    [InlineData("msgid \"{0} ewes\"\nmsgstr \"{0} {1}\"\n", "8:8 WRD009 the holes are {0} {1}, and should be {0}")]
    [InlineData("msgid \"ewes\"\nmsgstr \"{ewes}\"\n", "8:8 WRD010 a brace here is no part of a hole")]
    [InlineData("msgid \"{0} ewe\"\nmsgid_plural \"{0} ewes\"\nmsgstr[0] \"{0} A\"\n", "9:11 WRD011 there are 1 forms here, and should be 2")]
    [InlineData("msgid \"a\"\nmsgstr \"A\"\n\nmsgid \"a\"\nmsgstr \"B\"\n", "10:7 WRD012 the same entry stands in line 7 already")]
    [InlineData("msgid \"a\"\nmsgstr \"A\n", "8:8 WRD004 this string does not end where it should, or has an escape that there is none of")]
    [InlineData("msgid \"a\"\nmsgstr \"\\q\"\n", "8:8 WRD004 this string does not end where it should, or has an escape that there is none of")]
    [InlineData("msgid \"a\"\nmsgsrt \"A\"\n", "7:7 WRD005 this entry has no msgstr, or leaves out one of its forms|8:1 WRD001 \"msgsrt\" is no keyword of a PO file")]
    [InlineData("msgid \"a\"\nmsgstr A\n", "7:7 WRD005 this entry has no msgstr, or leaves out one of its forms|8:1 WRD002 msgstr has no string behind it")]
    [InlineData("\"lost\"\n", "7:1 WRD003 this string belongs to no keyword")]
    public void Every_mistake_has_its_place_and_the_language_is_not_made(string entries, string expected)
    {
        // Read with the header's last blank line taken off, a stray string would go on with the header.
        var catalogue = Po.Read(entries, entries.StartsWith('"') ? Po.Header().Replace("\n\n", "\n# stray below\n", StringComparison.Ordinal) : null);
        Assert.Null(catalogue.Language);
        Assert.Equal(expected.Split('|'), catalogue.Diagnostics.Select(d => $"{d.Span.Line}:{d.Span.Column} {d.Code} {d.Message}"));
    }

    [Theory]
    [InlineData("msgid \"a\"\nmsgstr \"A\"\n", "WRD013")]
    [InlineData("msgid \"\"\nmsgstr \"\"\n\"X: y\\n\"\n", "WRD006")]
    [InlineData("msgid \"\"\nmsgstr \"\"\n\"Language: \\n\"\n", "WRD006")]
    [InlineData("msgid \"\"\nmsgstr \"\"\n\"Language: c/../y\\n\"\n", "WRD006")]
    [InlineData("msgid \"\"\nmsgstr \"\"\n\"Language: cy\\n\"\n\"Content-Type: text/plain; charset=ISO-8859-1\\n\"\n", "WRD007")]
    [InlineData("msgid \"\"\nmsgstr \"\"\n\"Language: cy\\n\"\n\nmsgid \"a\"\nmsgid_plural \"b\"\nmsgstr[0] \"\"\nmsgstr[1] \"\"\n", "WRD008")]
    public void A_header_must_say_which_language_it_is(string text, string code) =>
        Assert.Equal(code, Assert.Single(PaperFlock.Languages.Po.Catalogue.Read("words.po", text).Diagnostics).Code);

    [Theory]
    [InlineData("pt_BR", "pt-BR")]
    [InlineData("en-XA", "en-XA")]
    [InlineData("ca@valencia", "ca")]
    public void The_language_is_known_by_its_tag(string header, string tag) => Assert.Equal(tag, Po.Language("", Po.Header(header)).Tag);
}
