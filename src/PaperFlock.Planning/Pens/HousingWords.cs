using System.Collections.Immutable;
using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;
using PaperFlock.Planning.Text;

namespace PaperFlock.Planning.Pens;

/// <summary>What the housing plan says, plainly.</summary>
internal static class HousingWords
{
    /// <summary>DEFRA PB5162: pregnant ewes in groups of under 50 where possible.</summary>
    private const int LargeGroup = 50;

    private const int MostNamed = 6;

    /// <param name="ewes">How many are to be housed.</param>
    /// <param name="without">Those with no room.</param>
    public static string Of(
        Flock flock, int ewes, ImmutableArray<EwePlan> without, ImmutableArray<FedEwe> fed, ImmutableArray<PenPlan> pens)
    {
        var sentences = new List<string>
        {
            ewes == 0 ? "No ewe is in lamb: nobody is housed."
                : without.IsEmpty ? English.Plural(ewes, $"The {ewes} ewe fits.", $"All {ewes} ewes fit.")
                : TooSmall(without),
        };

        var classes = fed.GroupBy(e => e.Kind).OrderBy(g => g.Key).ToList();
        var classesIn = pens.Select(p => (p.Pen, Classes: classes.Where(c => IsIn(c, p)).Select(c => Name(c.Key)).ToList())).ToList();
        foreach (var feeding in classes)
        {
            var where = pens.Where(p => IsIn(feeding, p)).Select(p => p.Pen.Name).ToList();
            if (where.Count > 1)
            {
                sentences.Add($"{Name(feeding.Key)}: split between {Listed(where)}.");
            }
        }

        sentences.AddRange(classesIn.Where(p => p.Classes.Count > 1).Select(p =>
            $"Sharing {p.Pen.Name}: {string.Join("; ", p.Classes)}. Part it with hurdles, or they cannot be fed apart."));
        sentences.AddRange(pens.Where(p => p.Ewes.Length >= LargeGroup).Select(p =>
            $"{p.Pen.Name} holds {p.Ewes.Length} ewes: groups of under {LargeGroup} are advised where possible (DEFRA PB5162)."));

        var untroughed = flock.Housing.Pens.Where(p => p.Trough is null).Select(p => p.Name).ToList();
        if (untroughed.Count > 0 && ewes > 0)
        {
            sentences.Add($"No trough length is given for {Listed(untroughed)}, so only floor is reckoned there.");
        }

        return string.Join(' ', sentences);
    }

    private static string TooSmall(ImmutableArray<EwePlan> without)
    {
        var named = without.Take(MostNamed).Select(e => e.Ewe.CallName).ToList();
        if (without.Length > MostNamed)
        {
            named.Add($"{without.Length - MostNamed} more");
        }

        var names = Listed(named);
        return English.Plural(
            without.Length,
            $"The shed is too small: {without.Length} ewe has no room ({names}).",
            $"The shed is too small: {without.Length} ewes have no room ({names}).");
    }

    private static string Name(FeedKind kind) => kind switch
    {
        FeedKind.Singles => "Singles",
        FeedKind.Twins => "Twins",
        FeedKind.Triplets => "Triplets",
        _ => "Not scanned",
    };

    private static bool IsIn(IEnumerable<FedEwe> feeding, PenPlan pen) =>
        feeding.Any(e => pen.Ewes.Any(p => string.Equals(p.Tag, e.Tag, StringComparison.Ordinal)));

    private static string Listed(IReadOnlyList<string> items) => items.Count switch
    {
        0 => "",
        1 => items[0],
        _ => $"{string.Join(", ", items.Take(items.Count - 1))} and {items[^1]}",
    };
}
