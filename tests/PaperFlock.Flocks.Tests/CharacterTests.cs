using System.Text;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Reading;
using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Tests;

/// <summary>Letters as people and programs type them: composed, unseen, alike, or in no typeface.</summary>
public class CharacterTests
{
    /// <summary>From Unicode's NormalizationTest.txt, part 1 and 2, columns 1 and 2: what is typed and its NFC.</summary>
    [Theory]
    [InlineData("\u1E0A", "\u1E0A")]
    [InlineData("\u1E0A\u0323", "\u1E0C\u0307")]
    [InlineData("D\u0307\u0323", "\u1E0C\u0307")]
    [InlineData("\u1E14", "\u1E14")]
    [InlineData("\u0112\u0300", "\u1E14")]
    [InlineData("\u1E14\u0304", "\u1E14\u0304")]
    [InlineData("E\u0304\u0300", "\u1E14")]
    [InlineData("E\u0300\u0304", "\u00C8\u0304")]
    [InlineData("\u212B", "\u00C5")]
    [InlineData("\u212A", "K")]
    [InlineData("o\u0302\u0323", "\u1ED9")]
    [InlineData("w\u0302yna", "\u0175yna")]
    [InlineData("To\u0304tara", "T\u014Dtara")]
    [InlineData("\u0304x", "\u0304x")]
    [InlineData("\U0001F411e\u0301", "\U0001F411\u00E9")]
    public void A_name_is_read_in_composed_form(string typed, string composed)
    {
        Assert.Equal(composed, ComposedText.Of(typed));
        Assert.Equal(composed, ComposedText.Of(composed));
        Assert.Equal(composed, Samples.Flock(Samples.Ewe($"name: \"{typed}\"")).Ewes[0].Name);
    }

    [Fact]
    public void A_group_is_found_however_its_letter_is_typed() =>
        Assert.Equal("T\u014Dtara", Samples.Flock(Samples.Text("groups:\n  - name: T\u014Dtara\n", ewes: Samples.Ewes + "    group: To\u0304tara\n")).Ewes[0].Group);

    /// <summary>Default ignorable characters of Unicode, one of each kind, and two blanks that are not among them.</summary>
    [Theory]
    [InlineData(0x00AD)] // soft hyphen
    [InlineData(0x034F)] // grapheme joiner
    [InlineData(0x115F)] // hangul filler
    [InlineData(0x180E)] // vowel separator
    [InlineData(0x200B)] // zero-width space
    [InlineData(0x200D)] // joiner
    [InlineData(0x202E)] // right to left from here
    [InlineData(0x2060)] // word joiner
    [InlineData(0x2066)] // left to right apart
    [InlineData(0x3164)] // hangul filler
    [InlineData(0xFE0F)] // variation selector
    [InlineData(0xFFA0)] // half-width filler
    [InlineData(0xE0041)] // tag
    [InlineData(0xE0100)] // variation selector
    [InlineData(0x2800)] // blank braille
    [InlineData(0x0600)] // format, and yet no ignorable one
    public void What_prints_nothing_is_refused_in_every_text_with_its_code(int code)
    {
        var odd = new Rune(code).ToString();
        foreach (var line in new[] { $"name: Brack{odd}en", $"note: \"Quiet{odd}\"", $"breed: {odd}Ryeland" })
        {
            var reading = Samples.ReadText(Samples.Ewe(line));
            var found = Assert.Single(reading.Diagnostics);
            Assert.Equal("FLK045", found.Code);
            Assert.Contains($"U+{code:X4}", found.Message, StringComparison.Ordinal);
            Assert.Equal(odd, reading.Source.TextOf(found.Span));
        }

        Assert.Contains("FLK045", Samples.Codes(Samples.Text(ewes: $"ewes:\n  - tag: ZZ{odd}1\n")));
        Assert.Contains("FLK045", Samples.Codes(Samples.Text($"jobs:\n  - {{title: \"Dip{odd}\", on: 2026-10-01}}\n")));
    }

    [Theory]
    [InlineData("ZZ 0123456 00101", "zz012345600101")]
    [InlineData("ZZ 0123456 00101", "ZZ\u00A00123456\u202F00101")]
    [InlineData("ZZ 0123456 00101", "ZZ-0123456\u201300101")]
    [InlineData("ZZ 0123456 00101", "ZZ\u22120123456\u201000101")]
    [InlineData("\u00C9 1", "e\u0301-1")]
    [InlineData("\u2014", "\u2014")]
    public void Tags_that_look_alike_are_one(string one, string other) => Assert.Equal(TagKey.Of(one), TagKey.Of(other));

    [Theory]
    [InlineData("ZZ 101", "ZZ 1O1")]
    [InlineData("ZZ 101", "ZZ 1010")]
    [InlineData("ZZ 101", "ZY 101")]
    [InlineData("-", "\u2013")]
    public void Other_tags_are_not(string one, string other) => Assert.NotEqual(TagKey.Of(one), TagKey.Of(other));

    /// <summary>A file of every text the format has, written from its tables, so that a new key is tried without a word here.</summary>
    [Fact]
    public void A_letter_that_no_typeface_has_is_found_in_every_text()
    {
        var written = new List<string>();
        var reading = Samples.ReadText(Section(FlockKeys.Top));
        var asked = new List<(string Text, bool IsTag)>();
        var found = reading.MissingCharacters((text, isTag) =>
        {
            asked.Add((text, isTag));
            return "\u7F8A";
        }).ToArray();
        Assert.Equal(written, asked.Select(a => a.Text));
        Assert.Equal(written.Where(text => text.StartsWith("tag", StringComparison.Ordinal)), asked.Where(a => a.IsTag).Select(a => a.Text));
        Assert.Superset(new HashSet<string>(["breed", "tup", "group", "name", "note", "title", "sitter", "raddle", "role", "tag"]), written.Select(text => text.Split(' ')[0]).ToHashSet());
        Assert.Equal(written.Count, found.Length);
        Assert.All(found, d => Assert.Equal((Severity.Error, "FLK120", "\u7F8A"), (d.Severity, d.Code, reading.Source.TextOf(d.Span))));

        string Section(KeyTable table) =>
            $"{{{string.Join(", ", table.Keys.Select(k => (k.Name, Value: Value(k.Name, k.Form))).Where(k => k.Value.Length > 0).Select(k => $"{k.Name}: {k.Value}"))}}}";

        string Value(string key, Form form) => form switch
        {
            TextForm => Written($"{key} {written.Count} \u7F8A"),
            SectionForm section => Section(section.Table),
            ListForm { Item: TextForm or SectionForm } list => $"[{Value(key, list.Item)}]",
            EitherForm either => Value(key, either.One) is { Length: > 0 } one ? one : Value(key, either.Other),
            _ => "",
        };

        string Written(string text)
        {
            written.Add(text);
            return text;
        }
    }

    /// <summary>Escaped, put together or over two lines, the letter is not in the file as it is printed: then its text is pointed at.</summary>
    [Theory]
    [InlineData("name: \"x\\u7f8a\"", "\u7F8A", "\"x\\u7f8a\"")]
    [InlineData("name: Bo\u0306", "\u014F", "Bo\u0306")]
    [InlineData("name: Bo\u014F", "\u014F", "\u014F")]
    public void A_letter_has_its_place(string line, string missing, string pointedAt)
    {
        var reading = Samples.ReadText(Samples.Ewe(line));
        var found = Assert.Single(reading.MissingCharacters((text, _) => text.Contains(missing, StringComparison.Ordinal) ? missing : null));
        Assert.Equal(pointedAt, reading.Source.TextOf(found.Span));
    }
}
