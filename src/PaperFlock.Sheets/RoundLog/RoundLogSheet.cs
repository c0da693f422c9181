using System.Collections.Immutable;
using PaperFlock.Flocks;
using PaperFlock.Languages;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Layout.Pages;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Sheets.RoundLog;

/// <summary>On the clipboard: when to go, what to look for, what was found. Two pages to a leaf, which is coded by its first day.</summary>
internal sealed class RoundLogSheet : ISheetMaker
{
    public const string KindWord = "log";
    private const int MostHeavyDays = 4;

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(Stationery stationery)
    {
        return InOrder.Select([.. LogRhythm.Of(stationery, HeavyDaysAPage(stationery))], leaf => Leaf(stationery, leaf));
    }

    private static Sheet Leaf(Stationery stationery, LogLeaf leaf)
    {
        // A sitter's set begins with the sitter's first day.
        var first = leaf.Pages[0].Days[0];
        var code = $"LOG-{Days.Code(stationery.OnlyDays is null ? leaf.From : first.Date)}";
        // Each has a head of its own, so pages are made again with their numbers where one did not hold all that it should.
        var pages = Pages(stationery, leaf.Pages, code, leaf.Pages.Length);
        if (pages.Length != leaf.Pages.Length)
        {
            pages = Pages(stationery, leaf.Pages, code, pages.Length);
        }

        var title = stationery.Language.Say($"Round log, {Span(first, leaf.Pages[^1].Days[^1], stationery.Language)}");
        return new Sheet(KindWord, code, title, SheetUse.Clipboard, Binder.Sides(stationery, code, pages)) { Last = leaf.Last };
    }

    private static ImmutableArray<Page> Pages(Stationery stationery, ImmutableArray<LogPage> leaf, string code, int of)
    {
        var pages = ImmutableArray.CreateBuilder<Page>();
        foreach (var page in leaf)
        {
            var before = pages.Count;
            var design = stationery.UprightDesign(code, Head(stationery, page, code), n => n with { Number = n.Number + before, Of = of });
            var side = before % 2 == 0 || stationery.LogsOnFronts ? PageSide.Front : PageSide.Back;
            pages.AddRange(Binder.Pages(stationery, code, Body(stationery, page, design), design, side, stationery.LogsOnFronts)
                .Select(p => p with
                {
                    Number = p.Number with { Number = p.Number.Number + before, Of = of },
                    // Once its last day is past, nobody misses the page.
                    Content = p.Content with { Name = Dated.Name(string.Empty, page.Days[^1].Date) },
                }));
        }

        return pages.ToImmutable();
    }

    private static Element Body(Stationery stationery, LogPage page, PageDesign design) => page.Pace switch
    {
        LogPace.QuietWeek => QuietWeek.Of(stationery, page),
        LogPace.HeavyDays => HeavyDays.Of(stationery, page, Room(stationery, design)),
        _ => LambingDayLog.Of(stationery, page.Days[0]),
    };

    private static Element Head(Stationery stationery, LogPage page, string code) =>
        stationery.Head(stationery.Language.Say($"Rounds, {Span(page.Days[0], page.Days[^1], stationery.Language)}"), code, titled: false, lead: Lead(stationery, page), right: Holder(stationery, page));

    private static string Span(RoundDay first, RoundDay last, Language language)
    {
        var (from, to) = (first.Date, last.Date);
        return from == to ? language.Days.Short(from) : from.Month == to.Month
            ? language.Say($"{language.Days.WeekdayNumber(from)} to {language.Days.Short(to)}")
            : language.Say($"{language.Days.Short(from)} to {language.Days.Short(to)}");
    }

    private static string Lead(Stationery stationery, LogPage page)
    {
        var heads = LogWords.EwesToCount(stationery.Plan);
        return page.Pace == LogPace.LambingDay
            ? stationery.Language.Say($"Count all {heads}. Go quietly: a ewe off by herself, pawing or straining, is starting. Note the time, watch, and do not chase her.")
            : stationery.Language.Say($"Count all {heads}. One on her back: roll her up, hold her till she stands, watch her walk off. Anything odd, ring before you wonder.");
    }

    /// <summary>Who has the pack on those days.</summary>
    private static string? Holder(Stationery stationery, LogPage page)
    {
        var away = page.Days.Select(d => stationery.Flock.KeeperDays.AbsenceOn(d.Date)).OfType<Absence>().FirstOrDefault();
        if (away is null)
        {
            return null;
        }

        var holder = away.Sitter is { } sitter ? stationery.Language.Say($"{sitter} has the pack") : stationery.Language.Say("The sitter has the pack");
        return away.Phone is { } phone ? $"{holder}\n{phone}" : holder;
    }

    /// <summary>As many as fit, by the day with the most rounds and the longest list of ewes to watch.</summary>
    private static int HeavyDaysAPage(Stationery stationery)
    {
        var lambing = LogRhythm.Lambing(stationery.Plan);
        var heavy = stationery.Plan.Rounds.Where(d => LogRhythm.PaceOf(stationery.Plan, lambing, d) == LogPace.HeavyDays).ToArray();
        if (heavy.Length == 0)
        {
            return 1;
        }

        // A long title is set smaller than a short one, so the least room may be under either.
        ImmutableArray<LogPage> samples = [new LogPage(LogPace.HeavyDays, [heavy[0], heavy[^1]]), new LogPage(LogPace.HeavyDays, [heavy[0]])];
        var room = samples.Min(sample => Room(stationery, stationery.UprightDesign("LOG-00AAA", Head(stationery, sample, "LOG-00AAA"))));
        var tallest = heavy.Max(d => Heights.Of(HeavyDays.Day(stationery, d), stationery.UprightWidth, stationery));
        return Math.Clamp((int)((room + HeavyDays.Spacing) / (tallest + HeavyDays.Spacing)), 1, MostHeavyDays);
    }

    /// <summary>Height of a page's body, in points.</summary>
    private static double Room(Stationery stationery, PageDesign design) => design.Paper.Height - design.Front.Vertical - (2 * design.Gap)
        - Heights.Of(design.Head!, stationery.UprightWidth, stationery) - Heights.Of(design.Foot!, stationery.UprightWidth, stationery);
}
