using System.Collections.Immutable;
using PaperFlock.Flocks;
using PaperFlock.Languages;

namespace PaperFlock.Planning.Dates;

internal static class EwePlans
{
    /// <summary>In the order of the flock file; trough groups and pens are filled in once feeding and housing are planned.</summary>
    public static ImmutableArray<EwePlan> Of(Flock flock, Language language) => [.. flock.Ewes.Select(ewe => Of(flock, ewe, language))];

    private static EwePlan Of(Flock flock, Ewe ewe, Language language)
    {
        var advice = TupAdvisor.Advise(ewe, language);
        var standing = Standings.Of(ewe, advice);
        var unscannedLitter = standing == Standing.LeftOut ? 0 : 1;
        return new(
            ewe,
            standing,
            Litter: ewe.Scan ?? unscannedLitter,
            Due: standing == Standing.ToLamb ? DueWindows.Of(flock, ewe, language) : null,
            advice,
            TroughGroup: null,
            Pen: null);
    }
}
