namespace PaperFlock.Planning.Feeding;

/// <summary>Who is together, and from when to when.</summary>
internal static class Together
{
    /// <summary>Spans over which the same ewes share a key; both ends included, by first day.</summary>
    public static IEnumerable<(T Key, LocalDate From, LocalDate To, ImmutableArray<Ewe> Ewes)> Spans<T>(
        IEnumerable<(T Key, LocalDate From, LocalDate To, Ewe Ewe)> stays)
        where T : notnull =>
        stays.GroupBy(s => s.Key).SelectMany(g => OfOne(g.Key, [.. g])).OrderBy(s => s.From);

    private static IEnumerable<(T Key, LocalDate From, LocalDate To, ImmutableArray<Ewe> Ewes)> OfOne<T>(
        T key, ImmutableArray<(T Key, LocalDate From, LocalDate To, Ewe Ewe)> stays)
    {
        var turns = stays.SelectMany(s => new[] { s.From, s.To.PlusDays(1) }).Distinct().Order().ToList();
        foreach (var (from, next) in turns.Zip(turns.Skip(1)))
        {
            ImmutableArray<Ewe> ewes = [.. stays.Where(s => s.From <= from && from <= s.To).Select(s => s.Ewe)];
            if (!ewes.IsEmpty)
            {
                yield return (key, from, next.PlusDays(-1), ewes);
            }
        }
    }
}
