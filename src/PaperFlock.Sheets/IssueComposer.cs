using PaperFlock.Sheets.Register;
using PaperFlock.Sheets.Swap;

namespace PaperFlock.Sheets;

/// <summary>Composes the next issue of a pack: all of it, or the leaves that say something else than before.</summary>
/// <param name="record">What has been printed of it; null for nothing.</param>
/// <param name="lastNumber">The highest number there has been, where that is more than the record knows.</param>
internal sealed class IssueComposer(SeasonPlan plan, ITextMeasurer measurer, PackRequest request, IssueRecord? record, int lastNumber)
{
    private readonly string _paper = PaperWords(plan.Flock.Print);

    /// <summary>No number is given twice.</summary>
    private int Next => Math.Max(record?.Last.Number ?? 0, lastNumber) + 1;

    /// <param name="since">Null for the issue in the binder, or else the last.</param>
    public ComposedIssue Compose(PackIssue? since)
    {
        var before = since ?? (request.Changed ? record?.Last : record is { Filed: { } filed } ? record.Find(filed) : record?.Last);
        if (!request.Changed)
        {
            return Whole(before, WholeReason.Asked);
        }

        return before is null ? throw new ArgumentException("changed leaves are told by an earlier issue", nameof(since))
            : before.Paper != _paper || before.Split != request.Split ? Whole(before, WholeReason.OtherPaper)
            : Changed(before);
    }

    /// <summary>What takes part in the look of every page.</summary>
    private static string PaperWords(PrintSettings print) =>
        $"{print.Paper}, planner {print.Planner}, {print.Units}, weeks from {print.WeekStarts}, {(print.Gloves ? "gloves" : "no gloves")}, {print.Binding}, {print.Duplex}";

    private ComposedIssue Whole(PackIssue? before, WholeReason reason)
    {
        var made = PrintWhole(plan, before, Next, record?.Issues ?? [], reason);
        // Without a leaf that is other or over, the last issue is still good, whatever day it is.
        return record?.Last is { IsWhole: true } last && last.Paper == _paper && last.Split == request.Split && !last.Leaves.Any(l => l.Leaf.IsOver(plan.AsOf)) && IsStill(last, made.Outcome!)
            && Again(last, then => PrintWhole(then, last.Since is { } number ? record.Find(number) : null, last.Number, record.Issues[..^1], reason)) is { } again
                ? again
                : made;
    }

    private ComposedIssue PrintWhole(SeasonPlan plan, PackIssue? before, int number, ImmutableArray<PackIssue> earlier, WholeReason reason)
    {
        var context = new SheetContext(plan, measurer, request, new IssueContext(number, plan.AsOf, before, marked: false));
        var (sheets, planner) = PackComposer.Make(context, request);
        var outcome = Comparison.Of(before?.Leaves ?? [], [.. sheets.SelectMany(s => Leaves.Of(s))], number, plan.AsOf, whole: true);
        var issue = IssueOf(plan, outcome, before);
        var register = RegisterSheet.Make(context, new Registered(sheets, sheets, planner, outcome, [.. earlier, issue]));
        return new ComposedIssue(Pack(context, [register, .. sheets], planner), outcome, Record(plan, earlier, issue), reason) { Since = before };
    }

    private ComposedIssue Changed(PackIssue before)
    {
        var made = PrintChanged(plan, before, Next, record?.Issues ?? []);
        return !made.Outcome!.IsNothing && record?.Last is { IsWhole: false } last && last.Since == before.Number && IsStill(last, made.Outcome)
            && Again(last, then => PrintChanged(then, before, last.Number, record.Issues[..^1])) is { } again
                ? again
                : made;
    }

    private ComposedIssue PrintChanged(SeasonPlan plan, PackIssue before, int number, ImmutableArray<PackIssue> earlier)
    {
        var marks = new IssueContext(number, plan.AsOf, before, marked: true);
        var context = new SheetContext(plan, measurer, request, marks);
        var (sheets, planner) = PackComposer.Make(context, request);
        var outcome = Comparison.Of(before.Leaves, [.. sheets.SelectMany(s => Leaves.Of(s))], number, plan.AsOf, whole: false);
        var current = sheets.RemoveAll(s => s.Last < plan.AsOf);
        if (outcome.IsNothing)
        {
            return new ComposedIssue(Pack(context, [], null), outcome, null, WholeReason.NotWhole) { Since = before };
        }

        var wanted = outcome.PutIn.Select(l => l.Leaf.Id).ToHashSet(StringComparer.Ordinal);
        ImmutableArray<Sheet> printed = [.. current.SelectMany(s => Only(plan, s, wanted, marks))];
        var issue = IssueOf(plan, outcome, before);
        var newPlanner = printed.Any(s => s.Definition == PackSheets.Planner) ? planner : null;
        // Issues after the one in the binder never got there.
        var filed = earlier.Select(i => i.Number > before.Number ? i with { What = "Never filed." } : i);
        var register = RegisterSheet.Make(context, new Registered(current, printed, newPlanner, outcome, [.. filed, issue]));
        var pack = Pack(context, [SwapSheet.Make(context, outcome, before), register, .. printed], newPlanner) with
        {
            Set = $"issue-{outcome.Number.ToString(CultureInfo.InvariantCulture)}",
        };
        return new ComposedIssue(pack, outcome, Record(plan, earlier, issue), WholeReason.NotWhole) { Since = before };
    }

    /// <summary>Whether a new issue would hold what the last one holds, leaf for leaf.</summary>
    private bool IsStill(PackIssue last, IssueOutcome now) =>
        Comparison.Of(last.Leaves, [.. now.Leaves.Select(l => l.Leaf)], now.Number, plan.AsOf, whole: false) is { IsNothing: true } outcome && outcome.Leaves.All(l => l.Struck.IsEmpty);

    /// <summary>The last issue as of the day it was made; null where the file no longer gives it.</summary>
    private ComposedIssue? Again(PackIssue last, Func<SeasonPlan, ComposedIssue> print)
    {
        var again = print(last.On == plan.AsOf ? plan : SeasonPlanner.Plan(plan.Flock, last.On));
        return again.Record?.Last.IsSameAs(last) == true ? again with { Record = record, IsAgain = true } : null;
    }

    /// <summary>What is cut up is laid out anew, as many to a leaf as it holds, whichever they are.</summary>
    private IEnumerable<Sheet> Only(SeasonPlan plan, Sheet sheet, HashSet<string> wanted, IssueContext marks) => sheet.Use == SheetUse.CutUp
        ? sheet.Definition.Make(new SheetContext(plan, measurer, request, marks) { OnlyCards = wanted })
        : Leaves.Only(sheet, wanted.Contains) is { } some ? [some] : [];

    private static ComposedPack Pack(SheetContext context, ImmutableArray<Sheet> sheets, Sheet? planner) =>
        new(context.Mark.Id, PackComposer.Title(context), sheets, planner);

    private PackIssue IssueOf(SeasonPlan plan, IssueOutcome outcome, PackIssue? before)
    {
        var numbers = new PhoneNumbers(plan.Flock);
        return new PackIssue(
            outcome.Number, outcome.On, outcome.WordsIn(), before?.Number, _paper, request.Split, [.. outcome.Leaves.Select(l => new IssuedLeaf(numbers.HiddenIn(l.Leaf), l.Issue, l.Replaces))]);
    }

    private IssueRecord Record(SeasonPlan plan, ImmutableArray<PackIssue> earlier, PackIssue issue) =>
        new(Wording.Tidy(plan.Flock.Holding.Name), PackMark.IdOf(plan), record?.Filed, [.. earlier, issue]);
}
