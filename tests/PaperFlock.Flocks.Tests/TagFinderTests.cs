namespace PaperFlock.Flocks.Tests;

/// <summary>Tags as they are typed, against tags as they stand in the file.</summary>
public sealed class TagFinderTests
{
    private static readonly TagFinder Finder = new(new[] { "ZZ 0123456 00101", "ZZ 7654321 00101", "ZZ 0123456 00102", "00102-9", "0123456700105" }.Select(tag => new Ewe(tag, "", default)));

    [Theory]
    [InlineData("ZZ 0123456 00101", "ZZ 0123456 00101")]
    [InlineData("zz012345600101", "ZZ 0123456 00101")]
    [InlineData("ZZ\u00a00123456\u201300101", "ZZ 0123456 00101")]
    [InlineData("zz-0123456-00101", "ZZ 0123456 00101")]
    [InlineData("56 00101", "ZZ 0123456 00101")]
    [InlineData("00101", "ZZ 0123456 00101|ZZ 7654321 00101")]
    [InlineData("1", "ZZ 0123456 00101|ZZ 7654321 00101")]
    [InlineData("02", "ZZ 0123456 00102")]
    [InlineData("001029", "00102-9")]
    [InlineData("123456700105", "0123456700105")]
    [InlineData("ZZ 9999999 00101", "")]
    [InlineData("900102", "")]
    [InlineData("-", "")]
    [InlineData("", "")]
    public void A_whole_tag_is_one_ewe_and_the_end_of_one_is_every_ewe_that_has_it(string typed, string tags) =>
        Assert.Equal(tags, string.Join('|', Finder.Find(typed).Select(e => e.Tag)));
}
