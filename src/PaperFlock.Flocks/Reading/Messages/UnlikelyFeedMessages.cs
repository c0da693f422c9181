namespace PaperFlock.Flocks.Reading;

// Warnings of what is unlikely of feeds and pens.

internal static partial class FlockMessages
{
    /// <param name="kind">Such as <c>hay</c>.</param>
    /// <param name="likely">With its unit.</param>
    public static Diagnostic FeedUnlikely(Field field, string kind, string likely) => Warning("FLK182", field.Span,
        $"`{field.Name}` of {kind} is {likely}, and here stands {Shown(field.AsWord()!)}",
        "check the figure, and the kind of feed; left out, a usual figure is taken");

    public static Diagnostic WithoutConcentrate(SourceSpan at, string key) => Warning("FLK196", at,
        $"`{key}` is an amount of concentrate, and there is none: nothing of it is printed",
        "take it out, or write what is fed under `concentrate`");

    /// <param name="intake">Of live weight, as <paramref name="most"/>.</param>
    public static Diagnostic IntakeOverMost(SourceSpan at, decimal intake, decimal most) => Warning("FLK198", at,
        $"forage alone is {Number(intake * 100)} % of her weight, and with all else she eats {Number(most * 100)} % at most",
        $"write `{Number(most * 100)} %`, or less");

    /// <param name="each">Kilograms for each ewe and day.</param>
    public static Diagnostic BucketsUnlikely(SourceSpan at, Buckets buckets, decimal each) => Warning("FLK199", at,
        $"one bucket of {Number(decimal.Round(buckets.Weight.Kilograms, 1))} kg to {Number(buckets.EwesPerBucket)} {(buckets.EwesPerBucket == 1 ? "ewe" : "ewes")} for {Number(buckets.Days)} {(buckets.Days == 1 ? "day" : "days")} is {Number(decimal.Round(each * 1000, 1))} g a day for each, where buckets give 3 to 500 g",
        "check `weight`, `ewes-per-bucket` and `days`: what one bucket weighs, how many share it, and how long it lasts them");

    /// <param name="key">Of more lambs than <paramref name="fewer"/>.</param>
    /// <param name="isGiven">The file says <paramref name="key"/>; else it is the usual figure.</param>
    public static Diagnostic LambedFallsShort(SourceSpan at, string key, Mass feed, string fewer, Mass feedOfFewer, bool isGiven) => Warning("FLK205", at,
        $"a ewe with a {key} at foot would get {Kilograms(feed)}{(isGiven ? "" : ", the usual figure")}, and one with a {fewer} {Kilograms(feedOfFewer)}: more lambs want more milk",
        isGiven ? $"write `{Kilograms(feedOfFewer)}`, or more; or check `{fewer}`" : $"check the figure, or add `{key}: {Kilograms(feedOfFewer)}`, or more");

    private static string Kilograms(Mass mass) => $"{Number(decimal.Round(mass.Kilograms, 2))} kg";

    public static Diagnostic NoLambingPens(SourceSpan at) => Warning("FLK190", at,
        "with no lambing pen a ewe that lambs indoors has nowhere to know her lambs",
        "write how many there are, or hurdles for; left out, the paper says how many are wanted");

    public static Diagnostic TroughTooLong(SourceSpan at, decimal metres, string pen) => Warning("FLK191", at,
        $"a trough of {Number(decimal.Round(metres, 1))} m has no place in `{pen}`",
        "write what ewes can stand at, both sides counted, or check `length` and `width` and their units");

    public static Diagnostic TurnoutBeforePen(SourceSpan at, int turnout, int penned) => Warning("FLK200", at,
        $"they go out {Number(turnout)} {(turnout == 1 ? "day" : "days")} after lambing, and hold a lambing pen for up to {Number(penned)}",
        $"write `{Number(penned)}`, or more");

    /// <param name="what">As it stands in the file.</param>
    public static Diagnostic NobodyHoused(SourceSpan at, string what, string advice) => Warning("FLK197", at, $"`{what}`, and the ewes lamb outdoors: nobody is housed", advice);
}
