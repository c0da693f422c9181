namespace PaperFlock.Sheets.Handover;

/// <summary>Days of a stay, both ends included, on which the same ewes eat together and no trough has more feeds than its block has columns.</summary>
internal sealed record StayPart(LocalDate From, LocalDate To, ImmutableArray<Company> Companies)
{
    /// <summary>More of them look alike.</summary>
    private const int MostFeeds = 3;

    public static IEnumerable<StayPart> Of(SeasonPlan plan, LocalDate from, LocalDate to)
    {
        StayPart? part = null;
        for (var day = from; day <= to; day = day.PlusDays(1))
        {
            var companies = Company.On(plan, day, to);
            if (part is not null && IsSame(part.Companies, companies) && companies.All(c => c.Feeds(part.From, day).Length <= MostFeeds))
            {
                part = part with { To = day };
                continue;
            }

            if (part is not null)
            {
                yield return part;
            }

            part = new StayPart(day, day, companies);
        }

        yield return part!;
    }

    /// <summary>A ewe with lambs goes from pen to pen by herself: her line in the block says so.</summary>
    private static bool IsSame(IEnumerable<Company> one, IEnumerable<Company> other)
    {
        var (first, second) = (one.Where(c => !c.WithLambs).ToList(), other.Where(c => !c.WithLambs).ToList());
        return first.Count == second.Count && first.Zip(second).All(pair => pair.First.IsSame(pair.Second));
    }
}
