namespace PaperFlock.Sheets.RoundLog;

/// <summary>On the clipboard: when to go, what to look for, what was found. Two pages to a leaf, which is coded by its first day.</summary>
internal static class RoundLogSheet
{
    public static readonly SheetDefinition Definition = new("log", "LOG", SheetUse.Clipboard)
    {
        Lives = "clipboard",
        Purpose = "each round: when it should be, when it was, what was found, what is left for tomorrow",
        IsForSitter = true,
        Together = "Round log",
        Make = Make,
    };

    private const int MostHeavyDays = 4;

    private static ImmutableArray<Sheet> Make(SheetContext context)
    {
        return [.. LogRhythm.Of(context, HeavyDaysAPage(context)).Select(leaf => Leaf(context, leaf))];
    }

    private static Sheet Leaf(SheetContext context, LogLeaf leaf)
    {
        // A sitter's set begins with the sitter's first day.
        var first = leaf.Pages[0].Days[0];
        var code = $"{Definition.Code}-{DateText.Code(context.OnlyDays is null ? leaf.From : first.Date)}";
        // Each has a head of its own, so pages are made again with their numbers where one did not hold all that it should.
        var pages = Pages(context, leaf.Pages, code, leaf.Pages.Length);
        if (pages.Length != leaf.Pages.Length)
        {
            pages = Pages(context, leaf.Pages, code, pages.Length);
        }

        var title = $"Round log, {Span(first, leaf.Pages[^1].Days[^1])}";
        return new Sheet(Definition, code, title, Binder.Sides(context, code, pages)) { Last = leaf.Last };
    }

    private static ImmutableArray<Page> Pages(SheetContext context, ImmutableArray<LogPage> leaf, string code, int of)
    {
        var pages = ImmutableArray.CreateBuilder<Page>();
        foreach (var page in leaf)
        {
            var before = pages.Count;
            var design = PageDesigns.Upright(context, code, Head(context, page, code), n => n with { Number = n.Number + before, Of = of });
            var side = before % 2 == 0 || context.LogsOnFronts ? PageSide.Front : PageSide.Back;
            pages.AddRange(Binder.Pages(context, code, Body(context, page, design), design, side, context.LogsOnFronts)
                .Select(p => p with
                {
                    Number = p.Number with { Number = p.Number.Number + before, Of = of },
                    // Once its last day is past, nobody misses the page.
                    Content = p.Content.Concerning(RowKey.Paragraph with { Last = page.Days[^1].Date }),
                }));
        }

        return pages.ToImmutable();
    }

    private static Element Body(SheetContext context, LogPage page, PageDesign design) => page.Pace switch
    {
        LogPace.QuietWeek => QuietWeek.Of(context, page),
        LogPace.HeavyDays => HeavyDays.Of(context, page, Room(context, design)),
        _ => LambingDayLog.Of(context, page.Days[0]),
    };

    private static Element Head(SheetContext context, LogPage page, string code) =>
        PageHead.Of(context, $"Rounds, {Span(page.Days[0], page.Days[^1])}", code, titled: false, lead: Lead(context, page), right: Holder(context, page));

    private static string Span(RoundDay first, RoundDay last)
    {
        var (from, to) = (first.Date, last.Date);
        return from == to ? DateText.Short(from) : from.Month == to.Month
            ? $"{DateText.WeekdayNumber(from)} to {DateText.Short(to)}"
            : $"{DateText.Short(from)} to {DateText.Short(to)}";
    }

    private static string Lead(SheetContext context, LogPage page)
    {
        var heads = LogText.EwesToCount(context.Plan);
        return page.Pace == LogPace.LambingDay
            ? $"Count all {heads}. Go quietly: a ewe off by herself, pawing or straining, is starting. Note the time, watch, and do not chase her."
            : $"Count all {heads}. One on her back: roll her up, hold her till she stands, watch her walk off. Anything odd, ring before you wonder.";
    }

    /// <summary>Who has the pack on those days.</summary>
    private static string? Holder(SheetContext context, LogPage page)
    {
        var away = page.Days.Select(d => context.Flock.KeeperDays.AbsenceOn(d.Date)).OfType<Absence>().FirstOrDefault();
        if (away is null)
        {
            return null;
        }

        var holder = away.Sitter is { } sitter ? $"{sitter} has the pack" : "The sitter has the pack";
        return away.Phone is { } phone ? $"{holder}\n{phone}" : holder;
    }

    /// <summary>As many as fit, by the day with the most rounds and the longest list of ewes to watch.</summary>
    private static int HeavyDaysAPage(SheetContext context)
    {
        var lambing = LogRhythm.Lambing(context.Plan);
        var heavy = context.Plan.Rounds.Where(d => LogRhythm.PaceOf(context.Plan, lambing, d) == LogPace.HeavyDays).ToArray();
        if (heavy.Length == 0)
        {
            return 1;
        }

        // A long title is set smaller than a short one, so the least room may be under either.
        ImmutableArray<LogPage> samples = [new LogPage(LogPace.HeavyDays, [heavy[0], heavy[^1]]), new LogPage(LogPace.HeavyDays, [heavy[0]])];
        var room = samples.Min(sample => Room(context, PageDesigns.Upright(context, "LOG-00AAA", Head(context, sample, "LOG-00AAA"))));
        var tallest = heavy.Max(d => Heights.Of(HeavyDays.Day(context, d), context.Page.UprightWidth, context));
        return Math.Clamp((int)((room + HeavyDays.Spacing) / (tallest + HeavyDays.Spacing)), 1, MostHeavyDays);
    }

    /// <summary>Height of a page's body, in points.</summary>
    private static double Room(SheetContext context, PageDesign design) => design.Paper.Height - design.Front.Vertical - (2 * design.Gap)
        - Heights.Of(design.Head!, context.Page.UprightWidth, context) - Heights.Of(design.Foot!, context.Page.UprightWidth, context);
}
