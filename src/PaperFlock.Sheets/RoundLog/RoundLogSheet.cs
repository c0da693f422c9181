using System.Collections.Immutable;
using PaperFlock.Flocks;
using PaperFlock.Sheets.House;

namespace PaperFlock.Sheets.RoundLog;

/// <summary>On the clipboard: when to go, what to look for, what was found. Each page is its own sheet, coded by its first day.</summary>
internal sealed class RoundLogSheet : ISheetMaker
{
    public const string KindWord = "log";

    public string Kind => KindWord;

    public ImmutableArray<Sheet> Make(Stationery stationery)
    {
        var pages = LogRhythm.Of(stationery.Plan);
        var sheets = ImmutableArray.CreateBuilder<Sheet>();
        for (var i = 0; i < pages.Length; i++)
        {
            sheets.Add(One(stationery, pages[i]));
        }

        return sheets.ToImmutable();
    }

    private static Sheet One(Stationery stationery, LogPage page)
    {
        var first = page.Days[0].Date;
        var code = $"LOG-{Days.Code(first)}";
        var body = page.Pace switch
        {
            LogPace.QuietWeek => QuietWeek.Of(stationery, page),
            LogPace.HeavyDays => HeavyDays.Of(stationery, page),
            _ => LambingDayLog.Of(stationery, page.Days[0]),
        };
        var head = stationery.Head(Title(page), code, Lead(stationery, page), Holder(stationery, page));
        var sides = Binder.BothSides(stationery, code, body, stationery.UprightDesign(code, head));
        return new Sheet(KindWord, code, $"Round log, {Title(page)}", SheetUse.Clipboard, sides);
    }

    private static string Title(LogPage page)
    {
        var (from, to) = (page.Days[0].Date, page.Days[^1].Date);
        return from == to ? Days.Short(from) : from.Month == to.Month
            ? $"{Days.WeekdayNumber(from)} to {Days.Short(to)}"
            : $"{Days.Short(from)} to {Days.Short(to)}";
    }

    private static string Lead(Stationery stationery, LogPage page)
    {
        var heads = LogWords.EwesToCount(stationery.Plan);
        return page.Pace == LogPace.LambingDay
            ? $"Count all {heads}. Go quietly: a ewe off by herself, pawing or straining, is starting. Note the time, watch, and do not chase her."
            : $"Count all {heads}. One on her back: roll her up, hold her till she stands, watch her walk off. Anything odd, ring before you wonder.";
    }

    /// <summary>Who has the pack on those days.</summary>
    private static string? Holder(Stationery stationery, LogPage page)
    {
        var away = page.Days.Select(d => stationery.Flock.KeeperDays.AbsenceOn(d.Date)).OfType<Absence>().FirstOrDefault();
        return away is null ? null : $"{away.Sitter ?? "The sitter"} has the pack{(away.Phone is { } phone ? $"\n{phone}" : "")}";
    }
}
