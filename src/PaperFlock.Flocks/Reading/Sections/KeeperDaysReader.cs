namespace PaperFlock.Flocks.Reading.Sections;

internal static class KeeperDaysReader
{
    public static KeeperDays Read(Section keeperDays, SeasonDraft season, Holding? holding) =>
        new(Free(keeperDays), Away(keeperDays, season, holding));

    private static ImmutableArray<IsoDayOfWeek> Free(Section keeperDays)
    {
        if (keeperDays.Find("free") is not { } field || field.AsItems() is not { } items)
        {
            return FlockKeys.EveryDay;
        }

        field.Bag.Add(items.Count == 0 ? FlockMessages.WrongCount(field.Span, "free", "at least one weekday", "[saturday, sunday]") : null);

        var named = items.Select(i => i.AsChoice<IsoDayOfWeek>()).OfType<IsoDayOfWeek>().Distinct().Order().ToImmutableArray();
        return named.IsEmpty ? FlockKeys.EveryDay : named;
    }

    private static ImmutableArray<Absence> Away(Section keeperDays, SeasonDraft season, Holding? holding)
    {
        var away = new List<Absence>();
        foreach (var entry in keeperDays.ListBelow("away"))
        {
            var from = DiaryDate.Near(entry.Require("from"), season);
            var to = DiaryDate.Near(entry.Require("to"), season);
            var sitter = entry.Find("sitter")?.AsText();
            var phone = entry.Find("phone")?.AsText();
            PeopleCheck.Sitter(entry, sitter, phone, holding);
            if (from is not { } first || to is not { } last)
            {
                continue;
            }

            var wrong = last < first ? FlockMessages.AbsenceBackwards(entry.Find("to")!.Span, first, last)
                : away.Find(a => a.From <= last && first <= a.To) is { } other ? FlockMessages.AbsencesOverlap(entry.Find("from")!.Span, LocalDate.Max(first, other.From), other.Span.Line)
                : null;
            entry.Bag.Add(wrong);
            if (wrong is null)
            {
                away.Add(new Absence(first, last, sitter, phone, entry.Find("from")!.Span));
            }
        }

        return [.. away.OrderBy(a => a.From)];
    }
}
