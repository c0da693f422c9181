using PaperFlock.Sheets.CallSheet;

namespace PaperFlock.Sheets.Tests.Parts;

/// <summary>The spelling alphabet of ICAO Annex 10, volume II, 5.2.1.3 (from memory), with its spellings Alfa and Juliett.</summary>
public sealed class SpokenTests
{
    [Theory]
    [InlineData("NY 480 046", "November Yankee, four eight zero, zero four six")]
    [InlineData("ny 48", "November Yankee, four eight")]
    [InlineData("ZZ9 9ZZ", "Zulu Zulu nine, nine Zulu Zulu")]
    [InlineData("AJ-X", "Alfa Juliett X-ray")]
    [InlineData("", "")]
    [InlineData("  A ", "Alfa,")]
    public void Letters_and_figures_are_said_one_by_one(string written, string spoken) => Assert.Equal(spoken, Spoken.Of(written));
}
