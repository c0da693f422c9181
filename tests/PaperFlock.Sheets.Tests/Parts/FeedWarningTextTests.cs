using PaperFlock.Diagnostics;
using PaperFlock.Planning;

namespace PaperFlock.Sheets.Tests.Parts;

public sealed class FeedWarningTextTests
{
    /// <summary>A sentence with its numbers, a line of advice, and a code of its own.</summary>
    [Fact]
    public void Every_kind_is_said_with_its_numbers_and_what_to_change()
    {
        var plan = Composed.HollinBank.Plan;
        var said = Enum.GetValues<FeedWarningKind>()
            .Select(kind => (Kind: kind, Words: FeedWarningText.Of(new FeedWarning(kind, default, "FEED-TWINS-1", [plan.Ewes[0].Ewe], 0.25m, 0.75m), plan.Flock)))
            .ToList();
        Assert.Distinct(said.Select(s => s.Words.Code));
        Assert.All(said, s =>
        {
            Assert.Matches(@"[0-9]", s.Words.Message);
            Assert.Matches(@"^[^\n\r]{10,}[^.\s]$", s.Words.Message);
            Assert.Matches(@"^[^\n\r]{5,}[^.\s]$", s.Words.Advice);
            Assert.Equal(s.Kind == FeedWarningKind.NoRation ? Severity.Error : Severity.Warning, s.Words.Severity);
        });
    }
}
