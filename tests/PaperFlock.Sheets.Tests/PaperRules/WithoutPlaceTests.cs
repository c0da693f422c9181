using PaperFlock.Planning;

namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>Where nothing says where the sheep are, nobody knows when it gets light there.</summary>
public sealed class WithoutPlaceTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void First_light_is_on_paper_only_where_the_place_is_known(bool known)
    {
        var text = Composed.SampleText("hollin-bank");
        var composed = Composed.Of(known ? text : Unplaced(text), Composed.HollinBankDay);
        var words = composed.InHand.Sides.SelectMany(s => s.Ink.Words).Select(w => w.Text.Replace('\u00a0', ' ')).ToList();

        Assert.Equal(known, words.Any(w => w.Contains("light", StringComparison.Ordinal) && w.Contains("first", StringComparison.Ordinal)));
        Assert.Equal(known ? "first light" : "morning", FeedText.Time(FeedTime.FirstLight, composed.Plan.Flock.Holding));
        Assert.Equal(!known, composed.Plan.Rounds[0].Times[0].Part == PartOfDay.Morning);
    }

    private static string Unplaced(string text) => string.Join('\n', text.Split('\n').Where(line => !line.TrimStart().StartsWith("location:", StringComparison.Ordinal) && !line.TrimStart().StartsWith("grid-reference:", StringComparison.Ordinal)));
}
