using PaperFlock.Flocks.Reading.Values;

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

        return season.TupIn is { } tupIn && (date < tupIn.PlusYears(-1) || date > tupIn.PlusYears(2))
            ? field.Refuse<LocalDate?>(FlockMessages.FarFromSeason(field.Span, field.Name, date, tupIn))
            : date;
    }
}
