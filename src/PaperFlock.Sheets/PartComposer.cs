using PaperFlock.Sheets.Register;

namespace PaperFlock.Sheets;

/// <summary>Composes what is no issue of its own: some sheets, single leaves, a sitter's days, a draft. Leaves bear the issue they came with.</summary>
/// <param name="record">What has been printed of the pack; null for nothing.</param>
internal sealed class PartComposer(SeasonPlan plan, ITextMeasurer measurer, PackRequest request, IssueRecord? record)
{
    /// <summary>A longer name might not fit on a disk.</summary>
    private const int LongestSet = 120;

    public ComposedIssue Compose()
    {
        var issues = request.Draft ? new IssueContext(record?.Last.Number ?? 1, plan.AsOf, null, marked: false) : IssueContext.Again(record, plan.AsOf);
        var context = new SheetContext(plan, measurer, request, issues);
        var (sheets, planner) = PackComposer.Make(context, request);
        var pages = request.Wants(RegisterSheet.Definition) ? [Register(context, sheets, planner), .. sheets] : sheets;
        var title = PackComposer.Title(context);
        if (request.Days is { } days)
        {
            // A title is searched for, and nobody types a no-break space.
            title = $"{title}, {DateText.Span(days).Replace('\u00a0', ' ')}";
        }

        var pack = new ComposedPack(context.Mark.Id, request.Draft ? $"{title}, draft" : title, pages, planner) { Set = Set() };
        ImmutableArray<string> missing = [.. request.Codes.Except(CodesOf(sheets), StringComparer.OrdinalIgnoreCase)];
        return new ComposedIssue(pack, null, null, WholeReason.Asked)
        {
            Missing = missing,
            Alike = missing.IsEmpty ? [] : Alike(missing),
            Newer = request.Days is null && !request.Draft ? [.. Newer(sheets)] : [],
        };
    }

    private ImmutableArray<string> Alike(ImmutableArray<string> codes)
    {
        var kinds = new PackRequest([.. codes.Select(PackSheets.OfCode).OfType<SheetDefinition>().Select(s => s.Kind)], request.Days);
        return [.. CodesOf(PackComposer.Make(new SheetContext(plan, measurer, kinds), kinds).Sheets)];
    }

    private static IEnumerable<string> CodesOf(ImmutableArray<Sheet> sheets) => sheets.SelectMany(s => s.Use == SheetUse.CutUp ? s.Parts.Select(p => p.Id) : [s.Code]);

    /// <summary>A register alone is that of the last issue, and lists all of its leaves.</summary>
    private Sheet Register(SheetContext context, ImmutableArray<Sheet> sheets, Sheet? planner)
    {
        if (record?.Last is not { } last || request.Draft)
        {
            return RegisterSheet.Make(context, new Registered(sheets, sheets, planner, null, record?.Issues ?? [new PackIssue(1, plan.AsOf, PackIssue.FirstWords, null, "", false, [])]));
        }

        var whole = new SheetContext(plan, measurer, PackRequest.Everything with { Split = request.Split }, new IssueContext(last.Number, plan.AsOf, last, marked: true));
        var known = last.Leaves.Select(l => l.Leaf.Id).ToHashSet(StringComparer.Ordinal);
        ImmutableArray<Sheet> all = [.. PackComposer.Make(whole, PackRequest.Everything).Sheets.Where(s => Leaves.IdsOf(s).All(known.Contains))];
        var outcome = new IssueOutcome(last.Number, last.On, [.. last.Leaves.Select(l => new LeafOutcome(l.Leaf, LeafFate.Kept, l.Issue, l.Replaces, []))], []);
        return RegisterSheet.Make(context, new Registered(all, sheets, planner, outcome, record.Issues));
    }

    private IEnumerable<string> Newer(ImmutableArray<Sheet> sheets)
    {
        var printed = (record?.Last.Leaves ?? []).ToDictionary(l => l.Leaf.Id, l => l.Leaf, StringComparer.Ordinal);
        return printed.Count == 0 ? [] : sheets.SelectMany(Leaves.Of).Where(l => !l.IsOver(plan.AsOf) && !(printed.GetValueOrDefault(l.Id)?.SaysOn(plan.AsOf, l) == true)).Select(l => l.Label);
    }

    /// <summary>What is in it, by page codes: <c>27DEC-02JAN-LOG</c>, <c>CARD-00101-00103-JOBS</c>, <c>draft</c>.</summary>
    private string Set()
    {
        var parts = new List<string>();
        if (request.Days is { } days)
        {
            parts.Add($"{DateText.Code(days.Start)}-{DateText.Code(days.End)}");
        }

        foreach (var sheet in PackSheets.All.Where(s => request.IsOfSome && request.Wants(s)))
        {
            parts.AddRange(request.Kinds.Contains(sheet.Kind)
                ? [sheet.Code]
                : [sheet.Code, .. request.Codes.Where(c => PackSheets.OfCode(c) == sheet).Select(c => c[(sheet.Code.Length + 1)..].ToUpperInvariant()).Distinct().Order(StringComparer.Ordinal)]);
        }

        var fit = parts.Count;
        while (parts.Take(fit).Sum(p => p.Length + 1) > LongestSet)
        {
            fit--;
        }

        return string.Join('-', [.. parts.Take(fit), .. fit < parts.Count ? [$"and-{parts.Count - fit}-more"] : Array.Empty<string>(), .. request.Draft ? ["draft"] : Array.Empty<string>()]);
    }
}
