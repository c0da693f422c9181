namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>What came of a lambing. Without its day none of it means anything.</summary>
internal static class LambingReader
{
    /// <param name="scan">Lambs counted; null where she was not scanned.</param>
    public static LambingResult Read(Section ewe, int? scan)
    {
        var result = new LambingResult(
            ewe.Find("lambed-time")?.AsTime(),
            ewe.Find("lambs-alive")?.AsWhole(),
            ewe.Find("lambs-dead")?.AsWhole(),
            ewe.Find("lambing-help")?.AsChoice<LambingHelp>());
        if (ewe.IsGiven("lambed") || ewe.IsMistyped("lambed"))
        {
            ewe.Bag.Add(WrongCount(ewe, scan, result));
            ewe.Bag.Add(ewe.Find("lambs") is { Value: Yaml.Sequence { Items.Length: var listed } } lambs && listed > (result.Alive ?? LambingResult.MostLambs)
                ? FlockMessages.MoreLambsThanBorn(lambs.KeySpan, listed, result.Alive)
                : null);
            return result;
        }

        ewe.RefuseGiven("without `lambed`", "add `lambed:` with the day, or take it out", "lambed-time", "lambs-alive", "lambs-dead", "lambing-help", "lambs");
        return LambingResult.Unknown;
    }

    /// <summary>A scanner may miss a lamb or count one that is lost later; two are a slip of the pen, here or there.</summary>
    private static Diagnostic? WrongCount(Section ewe, int? scan, LambingResult result)
    {
        var listed = ewe.Find("lambs") is { Value: Yaml.Sequence { Items.Length: > 0 and var number } } ? number : 0;
        if ((ewe.Find("lambs-alive") ?? (listed > 0 ? ewe.Find("lambs") : null) ?? ewe.Find("lambs-dead") ?? ewe.Find("lambed")) is not { } field)
        {
            return null;
        }

        var at = field.Name == "lambs" ? field.KeySpan : field.Span;
        var born = (result.Alive ?? Math.Min(listed, LambingResult.MostLambs)) + (result.Dead ?? 0);
        var isCounted = result is { Alive: not null, Dead: not null };
        return born > LambingResult.MostLambs ? FlockMessages.TooManyLambs(at, born, LambingResult.MostLambs)
            : scan == 0 ? FlockMessages.EmptyYetLambed(ewe.Find("lambed")?.Span ?? at)
            : scan is { } counted && (born > counted + 1 || (isCounted && born < counted - 1)) ? FlockMessages.LambsDoNotAddUp(at, born, counted)
            : isCounted && born == 0 ? FlockMessages.LambedNothing(at)
            : null;
    }
}
