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
            CheckCount(ewe, scan, result);
            CheckListed(ewe, result);
            return result;
        }

        ewe.RefuseGiven("without `lambed`", "add `lambed:` with the day, or take it out", "lambed-time", "lambs-alive", "lambs-dead", "lambing-help", "lambs");
        return LambingResult.Unknown;
    }

    private static void CheckListed(Section ewe, LambingResult result)
    {
        if (ewe.Find("lambs") is { Value: Yaml.Sequence { Items: var listed } } field && listed.Length > (result.Alive ?? LambingResult.MostLambs))
        {
            ewe.Bag.Add(FlockMessages.MoreLambsThanBorn(field.KeySpan, listed.Length, result.Alive));
        }
    }

    /// <summary>A scanner may miss a lamb or count one that is lost later; two are a slip of the pen, here or there.</summary>
    private static void CheckCount(Section ewe, int? scan, LambingResult result)
    {
        var listed = ewe.Find("lambs") is { Value: Yaml.Sequence { Items.Length: > 0 and var number } } ? number : 0;
        if ((ewe.Find("lambs-alive") ?? (listed > 0 ? ewe.Find("lambs") : null) ?? ewe.Find("lambs-dead") ?? ewe.Find("lambed")) is not { } field)
        {
            return;
        }

        var at = field.Name == "lambs" ? field.KeySpan : field.Span;
        var born = (result.Alive ?? Math.Min(listed, LambingResult.MostLambs)) + (result.Dead ?? 0);
        var isCounted = result is { Alive: not null, Dead: not null };
        if (born > LambingResult.MostLambs)
        {
            ewe.Bag.Add(FlockMessages.TooManyLambs(at, born, LambingResult.MostLambs));
        }
        else if (scan == 0)
        {
            ewe.Bag.Add(FlockMessages.EmptyYetLambed(ewe.Find("lambed")?.Span ?? at));
        }
        else if (scan is { } counted && (born > counted + 1 || (isCounted && born < counted - 1)))
        {
            ewe.Bag.Add(FlockMessages.LambsDoNotAddUp(at, born, counted));
        }
        else if (isCounted && born == 0)
        {
            ewe.Bag.Add(FlockMessages.LambedNothing(at));
        }
    }
}
