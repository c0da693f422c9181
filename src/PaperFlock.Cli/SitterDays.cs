using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Planning;
using PaperFlock.Sheets;

namespace PaperFlock.Cli;

/// <summary>The days after <c>--from</c> and <c>--to</c>, both ends included.</summary>
internal static class SitterDays
{
    /// <param name="sheets">Those asked for by name; empty for all that a sitter's pack holds.</param>
    /// <returns>Null when neither option was given: the whole season.</returns>
    /// <exception cref="UsageException">One is missing, they are the wrong way round, or a sheet is asked for that is not of some days.</exception>
    public static DateInterval? Of(LocalDate? from, LocalDate? to, ImmutableArray<string> sheets)
    {
        if (from is null && to is null)
        {
            return null;
        }

        if (from is not { } first)
        {
            throw new UsageException(Messages.FromMissing);
        }

        if (to is not { } last)
        {
            throw new UsageException(Messages.ToMissing);
        }

        if (last < first)
        {
            throw new UsageException(Messages.DaysReversed(first, last));
        }

        var others = PackSheets.All.Where(s => sheets.Contains(s.Kind) && !s.IsForSitter).Select(s => s.Kind).ToList();
        return others.Count == 0 ? new DateInterval(first, last) : throw new UsageException(Messages.NotOfSomeDays(others));
    }

    /// <exception cref="UsageException">The season's plan says nothing about some of the days.</exception>
    public static void MustBePlanned(DateInterval days, SeasonPlan plan)
    {
        if (days.Start < plan.From || days.End > plan.To)
        {
            throw new UsageException(Messages.NotPlanned(days.Start < plan.From ? days.Start : days.End, plan));
        }
    }
}
