namespace PaperFlock.Sheets;

/// <summary>What charts, troughs, places and feeds are called, on paper and on screen.</summary>
public static class FeedText
{
    /// <summary>"Twins, due 6 to 23 Jan".</summary>
    public static string Class(FeedChart chart) => $"{Kind(chart.Kind)}, due {Days(chart.FirstDue, chart.LastDue)}";

    public static string Kind(FeedKind kind) => kind switch
    {
        FeedKind.Singles => "Singles",
        FeedKind.Twins => "Twins",
        FeedKind.Triplets => "Triplets",
        FeedKind.NotScanned => "Not scanned",
        _ => "Sharing a trough",
    };

    /// <summary>The name of a field or pen, or what it is where the flock file names none.</summary>
    public static string Place(Place place) => place.Name ?? place.Kind switch
    {
        PlaceKind.Field => "Field",
        PlaceKind.Pen => "Shed",
        PlaceKind.LambingPen => "Lambing pen",
        PlaceKind.WithLambs => "With lambs",
        _ => "Gone",
    };

    /// <summary>"North bay, twins"; where twins have more than one chart, "North bay, twins 3" by its number.</summary>
    public static string Trough(Trough trough, FeedingPlan feeding) => $"{Place(trough.Place)}, {Class(trough, feeding)}";

    /// <summary>Whose trough it is.</summary>
    public static string Class(Trough trough, FeedingPlan feeding) => trough.LambsAtFoot is { } lambs ? AtFoot(lambs)
        : trough.Kind is null ? "not in lamb"
        : Class(feeding.Charts.First(c => c.Code == trough.Chart), feeding);

    /// <summary>"twins"; where twins have more than one chart, "twins 3" by its number.</summary>
    public static string Class(FeedChart chart, FeedingPlan feeding) => feeding.Charts.Count(c => c.Kind == chart.Kind) == 1
        ? Lower(Kind(chart.Kind))
        : $"{Lower(Kind(chart.Kind))} {chart.Number.ToString(CultureInfo.InvariantCulture)}";

    /// <summary>"once", "twice", "3 times".</summary>
    public static string Times(int feeds) => feeds switch { 1 => "once", 2 => "twice", _ => $"{feeds.ToString(CultureInfo.InvariantCulture)} times" };

    /// <summary>As the rounds are called.</summary>
    public static string Time(FeedTime time, Holding holding) => time switch
    {
        FeedTime.FirstLight => holding.Location is null ? "morning" : "first light",
        FeedTime.Midday => "midday",
        FeedTime.Dusk => "dusk",
        _ => "late",
    };

    public static string AtFoot(int lambs) => lambs switch { 1 => "one lamb at foot", 2 => "two at foot", _ => "three at foot" };

    public static string Forage(ForageKind kind) => kind switch
    {
        ForageKind.Hay => "Hay",
        ForageKind.Haylage => "Haylage",
        ForageKind.Silage => "Silage",
        ForageKind.Straw => "Feeding straw",
        _ => "Grass",
    };

    /// <summary>"6 to 23 Jan", "28 Dec to 3 Jan", "6 Jan".</summary>
    public static string Days(LocalDate from, LocalDate to) => (from, to) switch
    {
        _ when from == to => DateText.DayMonth(from),
        _ when (from.Year, from.Month) == (to.Year, to.Month) => $"{from.Day} to {DateText.DayMonth(to)}",
        _ => $"{DateText.DayMonth(from)} to {DateText.DayMonth(to)}",
    };

    private static string Lower(string words) => char.ToLowerInvariant(words[0]) + words[1..];
}
