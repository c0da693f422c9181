namespace PaperFlock.Sheets.Theme;

/// <summary>What every sheet of one pack shares: the plan, what is asked for, and the paper it goes on.</summary>
/// <param name="request">Null for the whole pack.</param>
/// <param name="issues">Null for a first issue.</param>
internal sealed class SheetContext(SeasonPlan plan, ITextMeasurer measurer, PackRequest? request = null, IssueContext? issues = null)
{
    public SeasonPlan Plan { get; } = plan;

    public Flock Flock => Plan.Flock;

    public PrintSettings Print => Plan.Flock.Print;

    public PackMark Mark { get; } = PackMark.Of(plan, request, issues);

    public ITextMeasurer Measurer { get; } = measurer;

    public PageSetup Page { get; } = new(plan.Flock.Print);

    public WriteIn WriteIn { get; } = new(plan.Flock.Print.Gloves);

    public ColumnWidths Columns { get; } = new(measurer);

    public Amounts Amounts { get; } = new(plan.Flock.Print.Units, plan.Flock.Feeds is { Scales: false, Concentrate.Scoop: { } scoop } ? scoop.Kilograms / 2 : null);

    /// <summary>The only days the pack is for, both ends included; null for the whole season.</summary>
    public DateInterval? OnlyDays { get; } = request?.Days;

    /// <summary>Somebody asks for that kind of sheet by its name, whatever the day.</summary>
    public bool IsNamed(SheetDefinition sheet) => request is { IsOfSome: true } && request.Wants(sheet);

    /// <summary>What is printed in different ways goes into different files.</summary>
    public bool IsSplit { get; } = request?.Split == true;

    /// <summary>Each page of the round log has a leaf to itself.</summary>
    public bool LogsOnFronts => Page.SingleSided || IsSplit;

    /// <summary>Page codes of the only cards wanted; null for all.</summary>
    public IReadOnlySet<string>? OnlyCards { get; init; } = request?.OnlyCards;

    /// <summary>Whether any of the days from <paramref name="first"/> to <paramref name="last"/>, both included, is one the pack is for.</summary>
    public bool Concerns(LocalDate first, LocalDate last) => OnlyDays is not { } days || (first <= days.End && last >= days.Start);

    /// <summary>Whether she may lamb, with nine chances in ten, on a day the pack is for; a pack for the season holds every ewe.</summary>
    public bool MayLamb(EwePlan ewe) => OnlyDays is null || (ewe.Due is { } due && Concerns(due.Earliest, due.Latest));
}
