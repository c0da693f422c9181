using System.Collections.Immutable;
using PaperFlock.Flocks;
using static PaperFlock.Planning.Dates.DateWords;

namespace PaperFlock.Planning.Lambing;

/// <summary>What the lambing curve says, for someone who does not read curves.</summary>
internal static class LambingWords
{
    /// <param name="days">Never empty.</param>
    public static string Of(Housing housing, int ewes, ImmutableArray<LambingDay> days)
    {
        var busiest = days.OrderByDescending(d => d.ExpectedEwes).ThenBy(d => d.Date).First();
        var curve = $"{Count(ewes, "ewe")} to lamb; the busiest day looks like {Day(busiest.Date)}, "
            + $"with {Count(busiest.P90, "ewe")} or fewer nine times in ten.";
        return housing.Lambing == LambingPlace.Outdoors ? curve : $"{curve} {Pens(housing.LambingPens, days)}";
    }

    private static string Pens(int? pens, ImmutableArray<LambingDay> days)
    {
        var wanted = days.Max(d => d.PensNeededP90);
        if (pens is not { } there)
        {
            return $"{Count(wanted, "lambing pen")} would be enough on any one night nine times in ten.";
        }

        var worst = days.OrderByDescending(d => d.ChanceOverPens).ThenBy(d => d.Date).First();
        var night = $"on the worst night, {Day(worst.Date)}";
        return worst.ChanceOverPens switch
        {
            < 0.005 => $"{Count(there, "lambing pen")} should be enough on every night, taken one by one.",
            > 0.9 => $"{Count(there, "lambing pen")} would hardly ever be enough {night}; {wanted} would be, nine times in ten.",
            > 0.5 => $"{Count(there, "lambing pen")} would more often than not be too few {night}; {wanted} would be enough nine times in ten.",
            var chance => $"{Count(there, "lambing pen")} would not be enough {night}, 1 time in {Math.Round(1 / chance!.Value):0}"
                + (wanted > there ? $"; {wanted} would be, nine times in ten." : "."),
        };
    }
}
