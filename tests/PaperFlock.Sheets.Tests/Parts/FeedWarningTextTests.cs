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
            .Select(kind => (Kind: kind, Words: WarningText.Of(new FeedWarning(kind, default, "FEED-TWINS-1", [plan.Ewes[0].Ewe], 0.25m, 0.75m), plan.Flock)))
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

    /// <summary>By place in the file, among all else that is warned of.</summary>
    [Fact]
    public void They_stand_among_the_other_warnings_of_a_plan()
    {
        var plan = Composed.PlanOf(Composed.SampleText("hollin-bank").Replace("per-lamb: 1 lb", "per-lamb: 1 kg", StringComparison.Ordinal), Composed.HollinBankDay);
        Assert.NotEmpty(plan.Warnings);
        Assert.Contains(plan.Feeding.Warnings, w => w.Kind == FeedWarningKind.KilogramForAPound);

        var said = WarningText.Of(plan);
        Assert.Equal(plan.Warnings.Concat(plan.Feeding.Warnings).Select(w => WarningText.Of(w, plan.Flock)).Order(ByPlace), said.Order(ByPlace));
        Assert.Equal(said.Select(w => w.Span.Line).Order(), said.Select(w => w.Span.Line));
    }

    private static Comparer<Diagnostic> ByPlace { get; } =
        Comparer<Diagnostic>.Create((one, other) => string.CompareOrdinal($"{one.Span} {one.Code} {one.Message}", $"{other.Span} {other.Code} {other.Message}"));
}
