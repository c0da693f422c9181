using PaperFlock.Sheets.Register;
using PaperFlock.Sheets.Swap;

namespace PaperFlock.Sheets;

/// <summary>Composes the next issue of a pack: all of it, or the leaves that say something else than before.</summary>
internal sealed class IssueComposer(SeasonPlan plan, ITextMeasurer measurer, PackRequest request)
{
    private readonly string _paper = PaperWords(plan.Flock.Print);

    public ComposedIssue Compose(IssueRecord? record)
    {
        var id = PackMark.Of(plan).Id;
        var reason = (request.Changed, record) switch
        {
            (true, null) => WholeReason.NoRecord,
            (true, { } r) when r.Pack != id => WholeReason.OtherPack,
            (true, { } r) when r.Paper != _paper || r.Split != request.Split => WholeReason.OtherPaper,
            (true, _) => WholeReason.NotWhole,
            _ => WholeReason.Asked,
        };
        var before = record?.Pack == id ? record : null;
        if (reason == WholeReason.NotWhole)
        {
            return Changed(before!);
        }

        return Again(before) ?? Whole(before, reason);
    }

    /// <summary>What takes part in the look of every page.</summary>
    private static string PaperWords(PrintSettings print) =>
        $"{print.Paper}, planner {print.Planner}, {print.Units}, weeks from {print.WeekStarts}, {(print.Gloves ? "gloves" : "no gloves")}, {print.Binding}, {print.Duplex}";

    private ComposedIssue Whole(IssueRecord? before, WholeReason reason)
    {
        var context = ContextOf(new IssueContext(before, plan.AsOf, marked: false));
        var (sheets, planner) = PackComposer.Make(context, request);
        var outcome = Comparison.Of(before, [.. sheets.SelectMany(s => Leaves.Of(s))], plan.AsOf, whole: true);
        ImmutableArray<IssueLine> issues = [.. before?.Issues ?? [], new IssueLine(outcome.Number, outcome.On, outcome.WordsIn())];
        var register = RegisterSheet.Make(context, new Registered(sheets, sheets, planner, outcome, issues));
        return new ComposedIssue(Pack(context, [register, .. sheets], planner), outcome, Record(context, outcome, issues), reason);
    }

    /// <summary>The same pack on the same day is the same issue, byte for byte; null where it is not the same.</summary>
    private ComposedIssue? Again(IssueRecord? before)
    {
        if (before is null || before.Last.On != plan.AsOf || before.Paper != _paper || before.Split != request.Split || before.Leaves.Any(l => l.Issue != before.Last.Number))
        {
            return null;
        }

        var context = ContextOf(new IssueContext(before, plan.AsOf, marked: false, again: true));
        var (sheets, planner) = PackComposer.Make(context, request);
        var leaves = sheets.SelectMany(s => Leaves.Of(s)).ToImmutableArray();
        if (leaves.Length != before.Leaves.Length || !leaves.Zip(before.Leaves).All(pair => pair.First.Id == pair.Second.Leaf.Id && pair.Second.Leaf.SaysOn(plan.AsOf, pair.First)))
        {
            return null;
        }

        var outcome = new IssueOutcome(
            before.Last.Number,
            plan.AsOf,
            [.. before.Leaves.Select(l => new LeafOutcome(l.Leaf, l.Replaces is null ? LeafFate.Added : LeafFate.Changed, l.Issue, l.Replaces, []))],
            []);
        var register = RegisterSheet.Make(context, new Registered(sheets, sheets, planner, outcome, before.Issues));
        return new ComposedIssue(Pack(context, [register, .. sheets], planner), outcome, before, WholeReason.Asked);
    }

    private ComposedIssue Changed(IssueRecord before)
    {
        var marks = new IssueContext(before, plan.AsOf, marked: true);
        var context = ContextOf(marks);
        var (sheets, planner) = PackComposer.Make(context, request);
        var outcome = Comparison.Of(before, [.. sheets.SelectMany(s => Leaves.Of(s))], plan.AsOf, whole: false);
        var current = sheets.RemoveAll(s => s.Last < plan.AsOf);
        if (outcome.IsNothing)
        {
            return new ComposedIssue(Pack(context, [], null), outcome, null, WholeReason.NotWhole);
        }

        var wanted = outcome.PutIn.Select(l => l.Leaf.Id).ToHashSet(StringComparer.Ordinal);
        ImmutableArray<Sheet> printed = [.. current.SelectMany(s => Only(s, wanted, marks))];
        ImmutableArray<IssueLine> issues = [.. before.Issues, new IssueLine(outcome.Number, outcome.On, outcome.WordsIn())];
        var newPlanner = printed.Any(s => s.Definition == PackSheets.Planner) ? planner : null;
        var register = RegisterSheet.Make(context, new Registered(current, printed, newPlanner, outcome, issues));
        var pack = Pack(context, [SwapSheet.Make(context, outcome), register, .. printed], newPlanner) with
        {
            Set = $"issue-{outcome.Number.ToString(System.Globalization.CultureInfo.InvariantCulture)}",
        };
        return new ComposedIssue(pack, outcome, Record(context, outcome, issues), WholeReason.NotWhole);
    }

    /// <summary>What is cut up is laid out anew, as many to a leaf as it holds, whichever they are.</summary>
    private IEnumerable<Sheet> Only(Sheet sheet, HashSet<string> wanted, IssueContext marks) => sheet.Use == SheetUse.CutUp
        ? sheet.Definition.Make(new SheetContext(plan, measurer, request, marks) { OnlyCards = wanted })
        : Leaves.Only(sheet, wanted.Contains) is { } some ? [some] : [];

    private SheetContext ContextOf(IssueContext issues) => new(plan, measurer, request, issues);

    private static ComposedPack Pack(SheetContext context, ImmutableArray<Sheet> sheets, Sheet? planner) =>
        new(context.Mark.Id, PackComposer.Title(context), sheets, planner);

    private IssueRecord Record(SheetContext context, IssueOutcome outcome, ImmutableArray<IssueLine> issues)
    {
        var numbers = new PhoneNumbers(plan.Flock);
        return new(context.Mark.Id, _paper, request.Split, issues, [.. outcome.Leaves.Select(l => new IssuedLeaf(numbers.HiddenIn(l.Leaf), l.Issue, l.Replaces))]);
    }
}
