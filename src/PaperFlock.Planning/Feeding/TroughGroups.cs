using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using PaperFlock.Flocks;

namespace PaperFlock.Planning.Feeding;

/// <summary>Who is fed with whom, how much, in how many feeds, week by week.</summary>
internal static class TroughGroups
{
    /// <param name="ewes">In the order of the flock file.</param>
    /// <param name="housed">The day a ewe goes in; null when she stays out.</param>
    /// <param name="housing">Splits a group that stands in several pens.</param>
    /// <returns>The groups in feeding order (by first week, then fewest lambs first), and all the ewes with their trough group and
    /// pen filled in.</returns>
    public static (ImmutableArray<TroughGroup> Groups, ImmutableArray<EwePlan> Ewes) Plan(
        Flock flock, IReadOnlyList<EwePlan> ewes, Func<EwePlan, LocalDate?> housed, HousingPlan housing)
    {
        var penOf = PenByTag(housing);
        var parts = Apart(FeedingClass.Of(flock, ewes)
            .SelectMany(c => Parts(c, penOf, housing))
            .OrderBy(p => p.FirstDue));

        var nameOf = parts.SelectMany(p => p.Ewes.Select(e => (e.Ewe.Tag, p.Name))).ToDictionary(StringComparer.Ordinal);
        var placed = ewes
            .Select(e => e with { TroughGroup = nameOf.GetValueOrDefault(e.Ewe.Tag), Pen = penOf.GetValueOrDefault(e.Ewe.Tag) })
            .ToImmutableArray();
        var planOf = placed.ToDictionary(e => e.Ewe.Tag, StringComparer.Ordinal);

        return ([.. parts.Select((p, i) => Group(flock, i + 1, p, [.. p.Ewes.Select(e => planOf[e.Ewe.Tag])], housed))], placed);
    }

    /// <summary>Ewes find their group by its name, so a translation that names two alike must not mix them up.</summary>
    private static List<Part> Apart(IEnumerable<Part> parts)
    {
        var used = new HashSet<string>(StringComparer.Ordinal);
        var apart = new List<Part>();
        foreach (var part in parts)
        {
            var name = part.Name;
            for (var n = 2; !used.Add(name); n++)
            {
                name = string.Create(CultureInfo.InvariantCulture, $"{part.Name} {n}");
            }

            apart.Add(part with { Name = name });
        }

        return apart;
    }

    private static Dictionary<string, string> PenByTag(HousingPlan housing) => housing.Pens
        .SelectMany(p => p.Ewes.Select(e => (e.Tag, p.Pen.Name)))
        .ToDictionary(StringComparer.Ordinal);

    private static IEnumerable<Part> Parts(FeedingClass feeding, Dictionary<string, string> penOf, HousingPlan housing)
    {
        var pens = housing.Pens.Select(p => (string?)p.Pen.Name).Append(null);
        var parts = pens
            .Select(pen => (Pen: pen, Ewes: feeding.Ewes.Where(e => penOf.GetValueOrDefault(e.Ewe.Tag) == pen).ToImmutableArray()))
            .Where(p => !p.Ewes.IsEmpty)
            .ToList();
        var name = feeding.NameIn();
        return parts.Select(p => new Part(
            parts.Count == 1 ? name : p.Pen is { } pen ? $"{name}, {pen}" : $"{name}, without a pen", feeding, p.Pen, p.Ewes));
    }

    private static TroughGroup Group(
        Flock flock, int number, Part part, ImmutableArray<EwePlan> ewes, Func<EwePlan, LocalDate?> housed)
    {
        var mob = new Mob(flock.Feeds, [.. ewes.Select(e => new MobMember(
            new EweNeed((double)EweWeights.Of(flock, e.Ewe), e.Litter, e.Ewe.Condition), housed(e)))]);
        var lastDue = ewes.Max(e => e.DueOrThrow().LastPossible);
        var weeks = FeedWeeks.Of(flock, mob, ewes.Length, part.Class.Litter, part.FirstDue, lastDue);
        return new TroughGroup(
            part.Name,
            number,
            part.Class.Litter,
            part.Class.Scanned,
            part.Pen,
            ewes,
            part.FirstDue,
            lastDue,
            weeks,
            MethodDifference.Words(flock.Feeds.Method, weeks))
        {
            Protein = ProteinWarning.Words(weeks),
            Assumed = AssumptionWords(flock, ewes),
        };
    }

    private static string AssumptionWords(Flock flock, ImmutableArray<EwePlan> ewes)
    {
        var unweighed = ewes.Count(e => EweWeights.IsAssumed(flock, e.Ewe));
        return unweighed switch
        {
            0 => "",
            _ when unweighed == ewes.Length => "No ewe here has a weight in the flock file: 70 kg (154 lb) is taken.",
            _ => $"{unweighed} of {ewes.Length} ewes {(unweighed == 1 ? "has" : "have")} no weight in the flock file: 70 kg (154 lb) is taken.",
        };
    }

    private sealed record Part(string Name, FeedingClass Class, string? Pen, ImmutableArray<EwePlan> Ewes)
    {
        public LocalDate FirstDue { get; } = Ewes.Min(e => e.DueOrThrow().FirstPossible);
    }
}
