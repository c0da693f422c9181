namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>Dates in the keeper's diary. One a year and more before the tup, or two after him, is a slip in the year: it would be silently no use.</summary>
internal static class DiaryDate
{
    public static LocalDate? Near(Field? field, SeasonDraft season)
    {
        if (field?.AsDate() is not { } date)
        {
            return null;
        }

        if (season.TupIn is { } tupIn && (date < tupIn.PlusYears(-1) || date > tupIn.PlusYears(2)))
        {
            return field.Refuse<LocalDate?>(FlockMessages.FarFromSeason(field.Span, field.Name, date, tupIn));
        }

        var otherYears = new[] { date.PlusYears(1), date.PlusYears(-1) };
        field.Bag.Add(season.Days is { } days && !days.Contains(date)
            ? FlockMessages.OutOfSeason(field.Span, field.Name, date, days, otherYears.Where(days.Contains).Cast<LocalDate?>().FirstOrDefault())
            : null);
        return date;
    }
}
