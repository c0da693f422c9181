using NodaTime;
using PaperFlock.Layout.Pieces;
using PaperFlock.Pdf;
using PaperFlock.Planning;
using PaperFlock.Sheets.Issues;
using PaperFlock.Sheets.Tests.PaperRules;

namespace PaperFlock.Sheets.Tests.Issues;

/// <summary>Paper as somebody keeps it who does what sheet CHG says: never looks at the record, only at what comes off the printer.</summary>
internal sealed class Pile
{
    private readonly Dictionary<string, (Leaf Leaf, int Issue)> _leaves = new(StringComparer.Ordinal);
    private byte[]? _record;

    public int Printed { get; private set; }

    public int Count => _leaves.Count;

    /// <summary>Prints what has changed, files it, and holds the pile against a whole pack printed on that day.</summary>
    /// <returns>What the issue was.</returns>
    public IssueOutcome Keep(string flock, LocalDate day)
    {
        var plan = Composed.PlanOf(flock, day);
        var record = _record is null ? null : IssueRecord.FromBytes(_record).Record;
        var issue = PackComposer.Compose(plan, FontLibrary.Measurer, PackRequest.Everything with { Changed = record is not null }, record);
        Assert.Equal(record is null ? WholeReason.Asked : WholeReason.NotWhole, issue.Whole);
        var outcome = issue.Outcome!;
        var printed = issue.Pack.Sheets.Where(s => s.Kind is not ("register" or "changes")).SelectMany(s => Leaves.Of(s)).ToImmutableArray();

        Assert.Equal(outcome.PutIn.Select(l => l.Leaf.Id), printed.Select(l => l.Id));
        Assert.All(printed, leaf => Assert.False(_leaves.TryGetValue(leaf.Id, out var old) && old.Leaf.SaysOn(day, leaf), $"{leaf.Id} did not change"));
        Assert.All(outcome.PutIn, leaf => Assert.Equal(_leaves.TryGetValue(leaf.Leaf.Id, out var old) ? old.Issue : null, leaf.Replaces));
        ReplacesOnPaper(plan, issue, outcome);

        foreach (var gone in outcome.TakenOut)
        {
            Assert.True(_leaves.Remove(gone.Leaf.Id), $"{gone.Leaf.Id} is not there to take out");
        }

        foreach (var kept in outcome.Leaves.Where(l => !l.Struck.IsEmpty))
        {
            // Whoever holds the pencil strikes those through, and the leaf says what a new one would.
            _leaves[kept.Leaf.Id] = (kept.Leaf, _leaves[kept.Leaf.Id].Issue);
        }

        foreach (var leaf in printed)
        {
            _leaves[leaf.Id] = (leaf, outcome.Number);
        }

        foreach (var over in _leaves.Where(l => l.Value.Leaf.IsOver(day)).Select(l => l.Key).ToArray())
        {
            _leaves.Remove(over);
        }

        Printed += printed.Length;
        _record = issue.Record is null ? _record : issue.Record.ToBytes();
        HoldsExactly(PackComposer.Compose(plan, FontLibrary.Measurer, PackRequest.Everything), day);
        return outcome;
    }

    private void HoldsExactly(ComposedPack whole, LocalDate day)
    {
        var wanted = whole.Sheets.Where(s => s.Kind != "register").SelectMany(s => Leaves.Of(s)).Where(l => !l.IsOver(day) && !IsAheadOfTheLog(l)).ToArray();
        Assert.Equal(wanted.Select(l => l.Id).Order(StringComparer.Ordinal), _leaves.Keys.Order(StringComparer.Ordinal));
        foreach (var leaf in wanted)
        {
            var differences = RowDiff.Between(_leaves[leaf.Id].Leaf.Rows, leaf.Rows, day).Select(c => c.Words(day));
            Assert.True(_leaves[leaf.Id].Leaf.SaysOn(day, leaf), $"{leaf.Id} in the binder is not what a whole pack has: {string.Join("; ", differences)}");
        }
    }

    /// <summary>More of the round log is printed only when little of it is left.</summary>
    private bool IsAheadOfTheLog(Leaf leaf) => leaf.Id.StartsWith("LOG-", StringComparison.Ordinal) && !_leaves.ContainsKey(leaf.Id)
        && leaf.Last > _leaves.Where(l => l.Key.StartsWith("LOG-", StringComparison.Ordinal)).Max(l => l.Value.Leaf.Last);

    /// <summary>Control lines name the issue, and the one each leaf takes the place of; every page keeps the rules of paper.</summary>
    private static void ReplacesOnPaper(SeasonPlan plan, ComposedIssue issue, IssueOutcome outcome)
    {
        if (outcome.IsNothing)
        {
            return;
        }

        var hand = PackInHand.Of(plan, issue.Pack, (_, side) => PageInk.AsPrinted(side.Page));
        // The two lists name codes of leaves that are not printed, which that rule cannot know from the pages.
        var broken = hand.Sides.SelectMany(side => Rules.OfASide
            .Where(rule => side.Sheet.Kind is not ("register" or "changes") || !rule.Name.StartsWith("A tag is always whole", StringComparison.Ordinal))
            .SelectMany(rule => rule.Broken(side).Select(what => new BrokenRule(side.Sheet.Kind, side.Side.Label, rule.Name, what))));
        Assert.True(!broken.Any(), PaperCheck.Summary([.. broken]));

        // A link of the register to a page that stays in the binder would lead nowhere.
        var items = issue.Pack.Sheets.SelectMany(s => s.Sides).SelectMany(s => s.Page.Content.Flatten().Items).ToArray();
        Assert.Empty(items.OfType<LinkItem>().Select(l => l.Target).Except(items.OfType<AnchorItem>().Select(i => i.Target), StringComparer.Ordinal));

        foreach (var side in hand.Sides.Where(s => !s.Side.IsBlank && s.Sheet.Kind is not ("register" or "changes" or "cards")))
        {
            var control = string.Join(' ', side.Ink.Words.Where(side.IsControlLine).Select(w => w.Text));
            var leaf = outcome[Leaves.Id(side.Sheet.Code, side.Sheet.Parts.IsEmpty ? Leaves.FirstPage(side.Side.Page.Number) : 1)];
            Assert.Contains($"issue {outcome.Number} ", control, StringComparison.Ordinal);
            Assert.Contains(leaf.Replaces is { } old ? $"replaces issue {old} " : "replaces none", control, StringComparison.Ordinal);
        }
    }
}
