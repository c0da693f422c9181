using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Places;

/// <summary>Who is sorted into which field by the lambs she carries, and when.</summary>
internal static class Sorting
{
    /// <summary>Before anybody is housed.</summary>
    public static EweMoves Moves(Flock flock, ImmutableArray<FedEwe> fed, ImmutableArray<Job> jobs)
    {
        var scanOf = jobs.Where(j => j.Kind == JobKind.Scan && j.Group is not null).ToDictionary(j => j.Group!.Name, j => (LocalDate?)j.ShownOn, StringComparer.Ordinal);
        var fieldOf = Fields(flock, fed);
        return new(
            Sorted: ewe => ewe.Scan is null ? null : scanOf.GetValueOrDefault(ewe.Group),
            SortedField: ewe => fieldOf.GetValueOrDefault(ewe.Tag),
            Housed: _ => null,
            Pen: _ => null);
    }

    /// <summary>By kind; one that would run alone goes with the kind above, or where there is none with the one below.</summary>
    private static Dictionary<string, string> Fields(Flock flock, ImmutableArray<FedEwe> fed)
    {
        var kinds = fed.Where(e => e.Plan.IsScanned).GroupBy(e => e.Kind).ToDictionary(g => g.Key, g => g.Count());
        var fields = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var ewe in fed.Where(e => e.Plan.IsScanned))
        {
            var kind = ewe.Kind;
            if (kinds[kind] == 1)
            {
                kind = kinds.Keys.Where(k => k > ewe.Kind).DefaultIfEmpty(kinds.Keys.Where(k => k < ewe.Kind).DefaultIfEmpty(kind).Max()).Min();
            }

            if (flock.Fields.For((int)kind + 1) is { } field)
            {
                fields[ewe.Tag] = field;
            }
        }

        return fields;
    }
}
