using System.Text;
using PaperFlock.Layout;
using PaperFlock.Pdf.Fonts;

namespace PaperFlock.Pdf.Tests;

public sealed class FontLibraryTests
{
    public static TheoryData<Face> Faces => [.. Enum.GetValues<Face>()];

    [Theory]
    [MemberData(nameof(Faces))]
    public void Every_letter_a_western_keeper_may_write_is_in_every_face(Face face)
    {
        // From memory: the alphabets of Welsh, Irish, Icelandic, Faroese, French, Spanish, German, Danish, Polish, Czech and Hungarian beyond A to Z.
        const string Letters = "ÂÊÎÔÛŴŶâêîôûŵŷÁÉÍÓÚáéíóúÐÞÆÖðþæöØøÇÈËÏÙÜŸŒçèëïùüÿœÑñ¿¡ÄäßÅåĄĆĘŁŃŚŹŻąćęłńśźżČĎĚŇŘŠŤŮŽčďěňřšťůžŐŰőű";
        const string Signs = " \u00A0!\"#$%&'()*+,-./0123456789:;<=>?@[\\]^_`{|}~£€°±·×÷½¼¾–—‘’“”…•−\u2009\u2011\u202F";
        Assert.Null(FontLibrary.FirstMissing(Letters, face));
        Assert.Null(FontLibrary.FirstMissing(Signs, face));
    }

    [Theory]
    [MemberData(nameof(Faces))]
    public void A_letter_is_made_of_its_parts_where_a_face_lacks_it(Face face)
    {
        // Maori, Hawaiian, Sanskrit and Igbo names, Esperanto, and a few more; from memory.
        Assert.Null(FontLibrary.FirstMissing("ĀĒĪŌŪāēīōū ŎŏĔĕ ĈĜĤĴŜŬĉĝĥĵŝŭ ḌḤḶṂṆṚṢṬḍḥḷṃṇṛṣṭ ẠẸỊỌỤạẹịọụ ẼĨŨỸẽĩũỹ ǍǏǑǓǎǐǒǔ ṄṠṅṡ ȳ ḏṯ ẖ", face));
        // A capital of two marks would stand higher than the line, and its small letter is left with it.
        Assert.Equal("Ế", FontLibrary.FirstMissing("aẾ", face));
        Assert.Equal("ế", FontLibrary.FirstMissing("aế", face));
    }

    [Theory]
    [MemberData(nameof(Faces))]
    public void Every_face_has_all_of_ASCII(Face face)
        => Assert.All(Enumerable.Range(0, 128), c => Assert.False(FontLibrary.Of(face).IsMissing(new Rune(c))));

    [Theory]
    [InlineData("ewe 🐑 12", "🐑")]
    [InlineData("Овца", "О")]
    [InlineData("w\u0302", "\u0302")]
    [InlineData("羊 and 🐑", "羊")]
    public void The_first_character_without_a_glyph_is_named_whole(string text, string missing)
        => Assert.Equal(missing, FontLibrary.FirstMissing(text, Face.Text));

    [Fact]
    public void Half_a_surrogate_pair_is_missing()
        => Assert.Equal("\ud83d", FontLibrary.FirstMissing("ab\ud83d", Face.Text));

    [Theory]
    [InlineData("")]
    [InlineData("two\nlines\r\n\tand a tab")]
    [InlineData("zero\u200Bwidth\u00ADand\uFEFFsoft")]
    public void What_prints_nothing_is_never_missing(string text)
    {
        Assert.Null(FontLibrary.FirstMissing(text, Face.Text));
        var printed = string.Concat(text.Where(c => c is not ('\n' or '\r' or '\t' or '\u200B' or '\u00AD' or '\uFEFF')));
        Assert.Equal(FontLibrary.Measurer.WidthOf(printed, Sample.Plain), FontLibrary.Measurer.WidthOf(text, Sample.Plain));
    }

    [Fact]
    public void A_file_that_is_not_in_the_program_is_our_bug()
        => Assert.Throws<InvalidOperationException>(() => new FontFace("Nowhere.ttf"));

    [Fact]
    public void A_face_is_loaded_once()
        => Assert.Single(Enumerable.Range(0, 64).AsParallel().Select(_ => FontLibrary.Of(Face.Mono)).Distinct());
}
