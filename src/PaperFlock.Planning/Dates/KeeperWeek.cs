namespace PaperFlock.Planning.Dates;

/// <summary>The week as the keeper's paper has it.</summary>
internal static class KeeperWeek
{
    /// <summary>The first day of the week a day lies in; the day itself when the week starts on it.</summary>
    public static LocalDate FirstDay(LocalDate day, IsoDayOfWeek weekStarts) =>
        day.DayOfWeek == weekStarts ? day : day.Previous(weekStarts);
}
