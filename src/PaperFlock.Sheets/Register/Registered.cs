namespace PaperFlock.Sheets.Register;

/// <summary>What the register lists.</summary>
/// <param name="All">Every sheet the pack should have, printed now or before.</param>
/// <param name="Printed">Those with a leaf printed now.</param>
/// <param name="Issue">Which leaf bears which issue; null where there is one issue only, as in a sitter's set.</param>
/// <param name="Issues">Of the pack so far, with this one; empty in a sitter's set.</param>
internal sealed record Registered(ImmutableArray<Sheet> All, ImmutableArray<Sheet> Printed, Sheet? WholePlanner, IssueOutcome? Issue, ImmutableArray<PackIssue> Issues)
{
    private const int CardsToARow = 6;

    /// <summary>Whether everything is printed.</summary>
    public bool IsWhole => Issue is null || Issue.PutIn.Length == Issue.Leaves.Length;

    /// <summary>The issue that all of a sheet bears; null when its leaves bear different ones.</summary>
    public int? IssueOf(Sheet sheet)
    {
        var issues = Leaves.IdsOf(sheet).Select(IssueOf).Distinct().ToArray();
        return issues.Length == 1 ? issues[0] : null;
    }

    /// <summary>The leaves of a sheet, or the cards that bear the same issue.</summary>
    public IEnumerable<(string Label, ImmutableArray<Phrase> Names, int? Leaves, int Issue)> ByIssue(Sheet sheet) => sheet.Parts.IsEmpty
        ? Leaves.IdsOf(sheet).Select(id => (Issue?[id].Leaf.Label ?? id, ImmutableArray<Phrase>.Empty, (int?)1, IssueOf(id)))
        : sheet.Parts.GroupBy(p => IssueOf(p.Id)).OrderBy(g => g.Key).SelectMany(
            g => g.Select(p => p.Title).Chunk(CardsToARow).Select(names => (sheet.Code, names.ToImmutableArray(), (int?)null, g.Key)));

    private int IssueOf(string id) => Issue is null ? 1 : Issue[id].Issue;
}
