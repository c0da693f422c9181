using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Places;

/// <summary>Who is sorted into which field by the lambs she carries, and when.</summary>
internal static class Sorting
{
    /// <param name="housed">The day a ewe goes in; null when she stays out.</param>
    /// <param name="pens">Pen of each ewe that has one, by tag.</param>
    public static EweMoves Moves(
        Flock flock, ImmutableArray<FedEwe> fed, ImmutableArray<PlannedJob> jobs, Func<Ewe, LocalDate?> housed, IReadOnlyDictionary<string, string> pens)
    {
        var scanOf = jobs.Where(j => j.Id == JobIds.Scan && j.Group is not null).ToDictionary(j => j.Group!.Name, j => j.ShownOn, StringComparer.Ordinal);
        var fieldOf = Fields(flock, fed);
        var none = flock.Housing.Pens.IsEmpty;
        return new(
            Sorted: ewe => ewe.Scan is not null ? scanOf.GetValueOrDefault(ewe.Group) is var day && day != default ? day : null : null,
            SortedField: ewe => fieldOf.GetValueOrDefault(ewe.Tag),
            // A shed with pens that hold no more leaves her out; without pens nobody says where she stands in it.
            Housed: ewe => none || pens.ContainsKey(ewe.Tag) ? housed(ewe) : null,
            Pen: ewe => pens.GetValueOrDefault(ewe.Tag));
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
