using System.Collections.Concurrent;
using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pages;
using PaperFlock.Layout.Structure;
using PaperFlock.Planning;
using PaperFlock.Sheets.Issues;
using static PaperFlock.Layout.Units;

namespace PaperFlock.Sheets.Theme;

/// <summary>What every sheet of one pack shares: the plan, the paper, box sizes, margins, heads and control lines.</summary>
/// <param name="request">Null for the whole pack.</param>
/// <param name="issues">Null for a first issue.</param>
internal sealed class SheetContext(SeasonPlan plan, ITextMeasurer measurer, PackRequest? request = null, IssueContext? issues = null)
{
    /// <summary>No ink nearer the edge: home printers cannot be trusted with less.</summary>
    public static readonly double Unprintable = Mm(6);

    /// <summary>At the foot some inkjets lose up to 12 mm.</summary>
    public static readonly double UnprintableFoot = Mm(12);

    /// <summary>Points between the body of a page on its side and its head and control line.</summary>
    public const double SidewaysGap = 6;

    /// <summary>Clears the punched holes of ISO 838: 12 mm to the centre, 6 mm across, a millimetre of slip.</summary>
    private static readonly double BindingMargin = Mm(20);

    // Asked for by every table that has days in it.
    private readonly ConcurrentDictionary<TextStyle, double> _widestDays = new();

    public SeasonPlan Plan { get; } = plan;

    public Flock Flock => Plan.Flock;

    public PrintSettings Print => Plan.Flock.Print;

    public LayoutContext Context { get; } = new(measurer);

    public ITextMeasurer Measurer => Context.Measurer;

    public Amounts Amounts { get; } = new(plan.Flock.Print.Units);

    public Size Paper { get; } = Papers.Of(plan.Flock.Print.Paper);

    /// <summary>The only days the pack is for, both ends included; null for the whole season.</summary>
    public DateInterval? OnlyDays { get; } = request?.Days;

    /// <summary>Each page of the round log has a leaf to itself.</summary>
    public bool LogsOnFronts => SingleSided || IsSplit;

    /// <summary>What is printed in different ways goes into different files.</summary>
    public bool IsSplit { get; } = request?.Split == true;

    /// <summary>Page codes of the only cards wanted; null for all.</summary>
    public IReadOnlySet<string>? OnlyCards { get; init; }

    public PackMark Mark { get; } = PackMark.Of(plan, request?.Days, issues);

    /// <summary>Height of a row written in out of doors.</summary>
    public double BarnRow => Mm(Print.Gloves ? 11 : 9);

    /// <summary>Height of a row written in at the table.</summary>
    public double TableRow => Mm(Print.Gloves ? 11 : 7);

    public double BarnTick => Mm(Print.Gloves ? 8 : 6);

    public double TableTick => Mm(Print.Gloves ? 8 : 5);

    public bool SingleSided => Print.Duplex == Duplex.SingleSided;

    /// <summary>Whether any of the days from <paramref name="first"/> to <paramref name="last"/>, both included, is one the pack is for.</summary>
    public bool Concerns(LocalDate first, LocalDate last) => OnlyDays is not { } days || (first <= days.End && last >= days.Start);

    /// <summary>Whether she may lamb, with nine chances in ten, on a day the pack is for; a pack for the season holds every ewe.</summary>
    public bool MayLamb(EwePlan ewe) => OnlyDays is null || (ewe.Due is { } due && Concerns(due.Earliest, due.Latest));

    /// <summary>A back turned round for a printer that flips on the short edge has its head where other pages have their foot.</summary>
    private double HeadMargin => Print.Duplex == Duplex.ShortEdge ? UnprintableFoot : Mm(9);

    /// <summary>Margins of an upright binder page.</summary>
    public Edges Upright(PageSide side)
    {
        var binding = Print.Binding == Binding.None ? Mm(10) : BindingMargin;
        return side == PageSide.Front
            ? new Edges(binding, HeadMargin, Mm(9), UnprintableFoot)
            : new Edges(Mm(9), HeadMargin, binding, UnprintableFoot);
    }

    /// <summary>
    /// Margins of a page on its side. In a side-bound binder every such page is turned the same way: the head is at the
    /// binding edge on fronts and at the outer edge on backs, and the left end is the foot of the leaf on both. The page's own foot
    /// keeps as clear, since nobody knows which way a printer turns it.
    /// </summary>
    public Edges Sideways(PageSide side)
    {
        var binding = Print.Binding == Binding.None ? UnprintableFoot : BindingMargin;
        return side == PageSide.Front
            ? new Edges(UnprintableFoot, binding, HeadMargin, UnprintableFoot)
            : new Edges(UnprintableFoot, UnprintableFoot, HeadMargin, binding);
    }

    /// <summary>Width between the margins of an upright page, in points.</summary>
    public double UprightWidth => Paper.Width - Upright(PageSide.Front).Horizontal;

    public Size SidewaysBody
    {
        get
        {
            var paper = Papers.Landscape(Paper);
            var margins = Sideways(PageSide.Front);
            return new Size(paper.Width - margins.Horizontal, paper.Height - margins.Vertical);
        }
    }

    /// <summary>
    /// A column as wide as it looks best, and where a longer word stands in it as wide as that: no word is cut in two.
    /// </summary>
    /// <param name="points">What looks best.</param>
    /// <param name="words">What stands in it; lines break at their spaces.</param>
    public Track Column(double points, TextStyle style, params IEnumerable<string> words) =>
        Column(points, style, Table.UsualPadding.Horizontal, words);

    /// <param name="padding">Points on both sides together, for cells that have not the usual one.</param>
    /// <inheritdoc cref="Column(double, TextStyle, IEnumerable{string})"/>
    public Track Column(double points, TextStyle style, double padding, params IEnumerable<string> words) =>
        Column(points, WidestOf(style, words) + padding);

    /// <summary>The same for days such as "Mon 4 Jan".</summary>
    public Track DayColumn(double points, TextStyle style, params IEnumerable<string> words) =>
        Column(points, Math.Max(_widestDays.GetOrAdd(style, s => WidestOf(s, SampleDays)), WidestOf(style, words)) + Table.UsualPadding.Horizontal);

    private static Track Column(double points, double wide) => Track.Fixed(wide <= points ? points : wide + 1);

    /// <returns>Points; 0 where there are no words.</returns>
    public double WidestOf(TextStyle style, IEnumerable<string> words)
    {
        var widest = 0.0;
        foreach (var text in words)
        {
            foreach (var word in text.AsSpan().SplitAny(' ', '\n'))
            {
                widest = Math.Max(widest, Measurer.WidthOf(text.AsSpan(word), style));
            }
        }

        return widest;
    }

    /// <summary>Every weekday in every month, all with two figures.</summary>
    private static IEnumerable<string> SampleDays =>
        from month in Enumerable.Range(1, 12)
        from day in Enumerable.Range(20, 7)
        select DateText.Short(new LocalDate(2026, month, day));

    /// <param name="renumber">Where the page stands in its sheet, for a sheet put together from several runs of pages.</param>
    public PageDesign UprightDesign(string code, Element head, Func<PageNumber, PageNumber>? renumber = null) => new(
        Paper, Upright(PageSide.Front), Upright(PageSide.Back), head, null, ControlLine(code, UprightWidth, renumber), 8, side => HoleTicks.Upright(Paper, Print.Binding, side));

    public PageDesign SidewaysDesign(string code, Element head) => new(
        Papers.Landscape(Paper), Sideways(PageSide.Front), Sideways(PageSide.Back), head, null, ControlLine(code, SidewaysBody.Width), SidewaysGap,
        side => HoleTicks.Sideways(Papers.Landscape(Paper), Print.Binding, side));

    /// <summary>Title at the left, page code at the right, a line to act on below, a heavy rule under it all.</summary>
    /// <param name="titled">False where the title says only which rows follow, so that it changes with them and not by itself.</param>
    public Element Head(string title, string code, Phrase? lead = null, string? right = null, bool sideways = false, bool titled = true)
    {
        var width = sideways ? SidewaysBody.Width : UprightWidth;
        var below = new List<Element>();
        if (lead is not null || right is not null)
        {
            below.Add(new Row(
                [
                    new RowCell(Track.Share(sideways ? 5 : 3), new Text((lead ?? "").Runs(TypeScale.Lead), Leading: 1.25)),
                    right == Mark.IssueWords ? IssueCell() : new RowCell(Track.Share(right is null ? 0.01 : 1), Block.Text(right ?? "", TypeScale.Label, TextAlign.Right)),
                ],
                8));
        }

        var codeStyle = code.Length > 6 ? TypeScale.LongCode : TypeScale.Code;
        var codeWidth = Measurer.WidthOf(code, codeStyle) + 2;
        return Block.Column(
            3,
            [
                new Row(
                    [
                        new RowCell(Track.Share(), Block.Largest(title, Measurer, width - codeWidth - 10, TextAlign.Left, TypeScale.Title, TypeScale.SmallerTitle) with { About = titled ? null : NotContent.Instance, Tag = StructureTag.Heading(1) }, VerticalAlign.Bottom),
                        new RowCell(Track.Fixed(codeWidth), Block.Text(code, codeStyle, TextAlign.Right), VerticalAlign.Top),
                    ],
                    10),
                .. below,
                new Rule(Lines.Section),
            ]);
    }

    /// <summary>As wide whichever issue it is, so that none moves what stands beside and below it.</summary>
    private RowCell IssueCell() => new(
        Track.Fixed(Measurer.WidthOf(PackMark.WidestIssueWords, TypeScale.Label) + 2),
        Block.Text(Mark.IssueWords, TypeScale.Label, TextAlign.Right) with { About = NotContent.Instance });

    /// <summary>On one line where it fits the width, else on two.</summary>
    /// <param name="width">Points between the margins.</param>
    public Element ControlLine(string code, double width, Func<PageNumber, PageNumber>? renumber = null)
    {
        var at = renumber ?? (n => n);

        // Page counts are known last; room is kept for three figures.
        var oneLine = Measurer.WidthOf(Mark.WidestControlLine(code), TypeScale.Control) <= width;
        return new Column(
            [
                new Rule(Lines.Grid),
                .. oneLine
                    ? [new PageText(n => Mark.ControlLine(code, at(n)), TypeScale.Control)]
                    : ImmutableArray.Create<Element>(new PageText(n => Mark.WhichPage(code, at(n)), TypeScale.Control), new PageText(n => Mark.Validity(code, at(n)), TypeScale.Control)),
            ],
            3)
        { About = NotContent.Instance };
    }
}
