using PaperFlock.Flocks;
using PaperFlock.Languages;
using PaperFlock.Layout.Pieces;
using PaperFlock.Pdf;
using PaperFlock.Sheets.TestPage;
using PaperFlock.Sheets.Tests.PaperRules;

namespace PaperFlock.Sheets.Tests.Translated;

/// <summary>On the printer's test page nothing flows, so long words must find room where they stand.</summary>
public sealed class PseudoTestPageTests
{
    public static TheoryData<Paper> Papers => [Paper.A4, Paper.Letter];

    [Theory]
    [MemberData(nameof(Papers))]
    public void Long_words_fit_and_none_is_cut_in_two_or_out_of_a_translators_reach(Paper paper) =>
        Assert.Empty(PaintedWords.Foreign(Leaf(paper, PseudoPack.Language), PseudoPack.Texts));

    [Theory]
    [MemberData(nameof(Papers))]
    public void Nothing_lies_over_anything_else_in_English_and_in_long_words(Paper paper) =>
        Assert.All([Language.English, PseudoPack.Language], language => Assert.All(Leaf(paper, language).Sides, side =>
        {
            var ink = InkOf(side);
            Assert.Empty(PaperRules.Type.Overlapping(ink));
            Assert.Empty(PaperRules.Type.Crossed(ink));
        }));

    /// <summary>Samples of type say how large they are.</summary>
    [Theory]
    [MemberData(nameof(Papers))]
    public void Samples_of_type_keep_their_size(Paper paper)
    {
        var sizes = InkOf(Leaf(paper, PseudoPack.Language).Sides[0]).Words.ToLookup(w => w.Style.Size, w => w.Text);
        Assert.All(["7.5", "8.5", "10", "12"], said => Assert.Contains(
            sizes[double.Parse(said, System.Globalization.CultureInfo.InvariantCulture)], text => text.StartsWith(said + " ", StringComparison.Ordinal)));
    }

    private static Sheet Leaf(Paper paper, Language language) => PrinterTest.Compose(paper, FontLibrary.Measurer, language);

    /// <summary>The rules of paper know no circles; there are no words near those that stand for holes and rings.</summary>
    private static PageInk InkOf(SheetSide side)
    {
        var page = side.Page;
        return PageInk.AsPrinted(page with { Content = new Piece(page.Paper, page.Content.Flatten().Items.RemoveAll(i => i is CircleItem)) });
    }
}
