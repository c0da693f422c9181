namespace PaperFlock.Flocks.Reading;

// Warnings of what is unlikely of a ewe.

internal static partial class FlockMessages
{
    /// <param name="term">The last day on which she can be expected to have carried them.</param>
    public static Diagnostic LostAfterTerm(SourceSpan at, LocalDate lost, LocalDate term, bool isMarked) => Warning("FLK180", at,
        $"a loss on {Day(lost)} does not fit {(isMarked ? "her marks" : "the days with the tup")}: she would have lambed by {Day(term)}",
        "check the day and its year; lambs born dead near their time are a lambing, with `lambs-dead`");

    public static Diagnostic EmptyYetLost(SourceSpan at) => Warning("FLK208", at,
        "she was scanned empty, and had no lambs to lose",
        "check which ewe it was; if she lost them before she was scanned, take out `scan: 0`");

    /// <param name="usual">Of her breed, in kilograms.</param>
    /// <param name="meant">The figure in the other unit, where that would be likely.</param>
    public static Diagnostic WeightUnlikely(SourceSpan at, string written, decimal usual, string? meant) => Warning("FLK183", at,
        $"a ewe of {written} is far from the {Number(decimal.Round(usual))} kg that her breed weighs here, and she is fed and penned by it",
        meant is null ? "check the figure and its unit, or weigh her again" : $"write `{meant}`, if that is what the scales said");

    /// <param name="most">Kilograms.</param>
    /// <param name="meant">The figure in the other unit, where that would be likely.</param>
    public static Diagnostic LambTooHeavy(SourceSpan at, string written, decimal most, string? meant) => Warning("FLK209", at,
        $"a lamb of {written} at birth is heavier than lambs are, which is {Number(most)} kg at most",
        meant is null ? "check the figure and its unit" : $"write `{meant}`, if that is what the scales said");

    /// <param name="middle">Of the weights of its ewes, in kilograms.</param>
    /// <param name="meant">The figure in the other unit, where that would be likely.</param>
    public static Diagnostic MatureWeightUnlikely(SourceSpan at, string breed, int unlikely, int weighed, decimal middle, string? meant) => Warning("FLK207", at,
        $"{Number(unlikely)} of {Number(weighed)} ewes of `{breed}` are far from this weight: the middle one is {Number(decimal.Round(middle))} kg",
        meant is null ? "check the figure and its unit here, and the unit of their weights" : $"write `{meant}`, if that is what a grown ewe weighs");

    public static Diagnostic GestationUnlikely(SourceSpan at, int days) => Warning("FLK195", at,
        $"no breed is known to average {Number(days)} days: breeds average 144 to 151, and every due date goes by it",
        "write `147`, or what the breed society gives");

    /// <param name="years">Of a ewe that is old for it; null for one that is too young.</param>
    public static Diagnostic AgeUnlikely(SourceSpan at, int born, int? years) => Warning("FLK210", at,
        years is { } old ? $"a ewe born in {Number(born)} is {Number(old)} years old when the tup goes in, and few are kept for lambs past ten"
            : $"a ewe born in {Number(born)} is 7 months old at most when the tup goes in, and ewe lambs that go to him at all are older",
        "check the year she was born; if it is right and she stays behind, add `to-tup: no`");

    /// <param name="key">What the file says of earlier years.</param>
    public static Diagnostic TooYoungForAPast(SourceSpan at, string key, int born) => Warning("FLK201", at,
        $"`{key}` tells of an earlier lambing, and a ewe born in {Number(born)} has had none",
        "check `born`, and which ewe it was");
}
