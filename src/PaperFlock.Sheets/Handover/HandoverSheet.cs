using PaperFlock.Diagnostics;

namespace PaperFlock.Sheets.Handover;

/// <summary>While somebody else is in charge: on the front all it takes to do the next round, overleaf every ewe and what changes meanwhile.</summary>
internal static class HandoverSheet
{
    public static readonly SheetDefinition Definition = new("handover", "HAND", SheetUse.Binder)
    {
        Lives = "kitchen, then the shed door",
        Purpose = "who is where, what they get and when, whom to watch; overleaf every ewe",
        IsForSitter = true,
        Together = "Handovers",
        Make = Make,
    };

    private static ImmutableArray<Sheet> Make(SheetContext context) =>
        [.. Absences(context).Select(a => One(context, a))];

    /// <summary>Days asked for on which nobody is said to be in charge are handed over all the same, to somebody still to be found; where no ewe is left, there is nothing to hand over.</summary>
    private static IEnumerable<Absence> Absences(SheetContext context)
    {
        var away = context.Flock.KeeperDays.Away;
        var handed = context.OnlyDays is { } days
            ? away.Where(a => context.Concerns(a.From, a.To)).Concat(InNobodysCharge(days, away)).OrderBy(a => a.From)
            : away.Where(a => a.To >= context.Plan.AsOf);
        return handed.Where(a => context.Flock.Ewes.Any(e => !(e.Gone?.On <= a.From)));
    }

    private static IEnumerable<Absence> InNobodysCharge(DateInterval days, ImmutableArray<Absence> away) =>
        DateText.Runs(days.Where(day => !away.Any(a => a.From <= day && day <= a.To))).Select(run => new Absence(run.Start, run.End, null, null, SourceSpan.WholeFile));

    private static Sheet One(SheetContext context, Absence away)
    {
        var code = $"{Definition.Code}-{DateText.Code(away.From)}{(context.Flock.SeasonDays.Contains(away.From) ? "" : (away.From.Year % 100).ToString("00", CultureInfo.InvariantCulture))}";
        var title = Title(context, away);
        var parts = StayPart.Of(context.Plan, away.From, away.To).ToList();
        var shown = parts.Where(p => p.To >= context.Plan.AsOf).DefaultIfEmpty(parts[^1]).ToList();
        var head = Head(context, away, code, title, shown[0]);
        var later = Titled(context, code, title, TypeScale.Heading, null);
        var body = context.Page.SidewaysBody;
        var foot = Heights.Of(PageDesigns.ControlLine(context, code, body.Width), body.Width, context) + (2 * PageSetup.SidewaysGap) + 1;
        var room = (First: body.Height - Heights.Of(head, body.Width, context) - foot, Later: body.Height - Heights.Of(later, body.Width, context) - foot);

        ImmutableArray<Element> sides =
        [
            .. shown.SelectMany((p, i) => Sides(context, p, i == 0, body.Width, i == 0 ? room : (room.Later, room.Later))),
            .. Overleaf(context, away, parts[^1], body.Width, room.Later),
        ];
        var design = PageDesigns.Sideways(context, code, head) with { ContinuedHead = later };
        var all = new Column([.. sides.SelectMany((side, i) => i == 0 ? new[] { side } : [new PageBreak(), side])]);
        return Binder.Bind(context, Definition, code, title, all, design) with { Last = away.To };
    }

    private static string Title(SheetContext context, Absence away)
    {
        var days = DateText.SpanOf(context.Flock, new DateInterval(away.From, away.To));
        return away.Sitter is { } sitter ? $"While {People.First(sitter)} is in charge: {days}" : $"While {People.Keeper(context.Flock)} is away: {days}";
    }

    /// <summary>Whom to ring, and the rounds of the first days.</summary>
    private static Column Head(SheetContext context, Absence away, string code, string title, StayPart first)
    {
        var flock = context.Flock;
        var keeper = People.Keeper(flock);
        var (bold, plain) = (Block.Bold(TypeScale.Lead), TypeScale.Lead);
        var numbers = new Text(
            [
                .. away.Sitter is null ? new[] { new Run("in charge __________   ", plain) } : [],
                new Run($"{char.ToUpperInvariant(keeper[0])}{keeper[1..]} ", bold),
                new Run($"{People.Phone(flock, c => People.IsKeeper(c, flock))}   ", plain),
                new Run("Vet ", bold),
                new Run($"{People.Phone(flock, c => c.IsVet)}   ", plain),
                new Run("signal ", plain),
                new Run(flock.Holding.Signal ?? "__________", bold),
            ],
            Leading: 1.15);
        var rounds = new Text([.. RoundsOfDay.Of(context.Plan, first)], TextAlign.Right, 1.15);
        var right = context.Measurer.WidthOf(rounds.Words, bold);
        return Block.Column(
            3,
            Titled(context, code, title, TypeScale.SmallerTitle, StructureTag.Heading(1)),
            new Rule(Lines.Section),
            rounds.Words.Length == 0 ? numbers : Block.Ends(numbers, rounds, Math.Min(right + 2, context.Page.SidewaysBody.Width * 0.45), 8, VerticalAlign.Top));
    }

    private static Row Titled(SheetContext context, string code, string title, TextStyle style, StructureTag? tag) => Block.Ends(
        Block.Text(title, style, leading: 1.15) with { Tag = tag },
        Block.Text(code, TypeScale.LongCode, TextAlign.Right),
        context.Measurer.WidthOf(code, TypeScale.LongCode) + 2,
        10);

    private static IEnumerable<Element> Sides(SheetContext context, StayPart part, bool isFirst, double width, (double First, double Later) room)
    {
        var lead = Lead(context, part, isFirst);
        var rounds = RoundsOfDay.FedAt(part);
        var blocks = part.Companies.SelectMany(c => TroughBlock.Of(context, part, c, width, rounds)).ToList();
        var sides = new BlockSides(context, width, (room.First - Heights.Of(lead, width, context) - 6, room.Later)).Of(blocks, HandoverNotes.Of(context, part, isFirst), LambingPens.Of(context));
        return sides.Select((s, i) => i > 0 && i < sides.Length - 1 ? s : Block.Column(6, [.. i == 0 ? new[] { lead } : [], s, .. i == sides.Length - 1 ? new[] { Block.Notes(context.WriteIn.TableRow) } : Array.Empty<Element>()]));
    }

    /// <summary>The rounds, how many there are, and how a block is read.</summary>
    private static Text Lead(SheetContext context, StayPart part, bool isFirst)
    {
        var isFed = part.Companies.Any(c => c.Feeds(part.From, part.To).Any(f => !f.FedAt.IsEmpty));
        return new Text(
            [
                .. isFirst ? [] : new[] { new Run($"{DateText.Span(new DateInterval(part.From, part.To))}   ", Block.Bold(TypeScale.Lead)) },
                .. isFirst ? [] : RoundsOfDay.Of(context.Plan, part).Append(new Run("\n", TypeScale.Lead)),
                new Run($"{part.Companies.Sum(c => c.Ewes.Length)} in all. ", TypeScale.BodyBold),
                .. isFed
                    ?
                    [
                        new Run("Count the heads, read across: ", TypeScale.BodyBold),
                        new Run($"{(context.Flock.Feeds.Scales ? "" : "level ")}{context.Amounts.AtFeedUnit} of {context.Flock.Feeds.Concentrate.Name} for ", TypeScale.Body),
                        new Run("all of them together, this feed.", TypeScale.BodyBold),
                    ]
                    : new[] { new Run("Nobody gets concentrate in these days.", TypeScale.Body) },
                .. RoundsOfDay.ByNight(context.Plan, part) is { } night ? [new Run($" {DateText.Short(night)} on: {NightRounds(context, night)} too.", TypeScale.BodyBold)] : Array.Empty<Run>(),
            ],
            Leading: 1.2);
    }

    private static string NightRounds(SheetContext context, LocalDate day) =>
        English.List([.. context.Plan.Rounds.First(r => r.Date == day).Times.Where(t => t.Part == PartOfDay.Night).Select(t => DateText.Clock(t.At))]);

    private static IEnumerable<Element> Overleaf(SheetContext context, Absence away, StayPart last, double width, double room)
    {
        const double apart = 6;
        var below = HandingBack.Of(context, away, last);
        var high = Heights.Of(below, width, context) + apart;
        var sides = new EweRoll(context, new DateInterval(away.From, away.To), width).Sides(room).ToList();
        return Heights.Of(sides[^1], width, context) + high <= room ? [.. sides[..^1], Block.Column(apart, sides[^1], below)] : [.. sides, below];
    }
}
