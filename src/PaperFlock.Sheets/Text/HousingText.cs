namespace PaperFlock.Sheets;

/// <summary>What the housing plan says, plainly.</summary>
public static class HousingText
{
    /// <summary>DEFRA PB5162: pregnant ewes in groups of under 50 where possible.</summary>
    private const int LargeGroup = 50;

    private const int MostNamed = 6;

    public static Phrase Of(HousingPlan housing, Flocks.Housing file)
    {
        if (file.Lambing == LambingPlace.Outdoors)
        {
            return "The ewes lamb outdoors: no pens are planned.";
        }

        if (file.Pens.IsEmpty)
        {
            return "The flock file names no pens, so nobody is placed in one.";
        }

        var housed = housing.Pens.Sum(p => p.Ewes.Length);
        var sentences = Pens(housing);
        var untroughed = file.Pens.Where(p => p.Trough is null).Select(p => p.Name).ToList();
        if (untroughed.Count > 0 && housed + housing.WithoutRoom.Length > 0)
        {
            sentences = sentences.Append($"No trough length is given for {English.List(untroughed)}, so only floor is reckoned there.");
        }

        return Fit(housed, housing.WithoutRoom) + string.Concat(sentences.Select(s => " " + s));
    }

    private static IEnumerable<string> Pens(HousingPlan housing)
    {
        foreach (var kind in housing.Kinds)
        {
            var where = housing.Pens.Where(p => IsIn(kind, p)).Select(p => p.Pen.Name).ToList();
            if (where.Count > 1)
            {
                yield return $"{FeedText.Kind(kind.Kind)}: split between {English.List(where)}.";
            }
        }

        foreach (var pen in housing.Pens)
        {
            var kinds = housing.Kinds.Where(k => IsIn(k, pen)).Select(k => FeedText.Kind(k.Kind)).ToList();
            if (kinds.Count > 1)
            {
                yield return $"Sharing {pen.Pen.Name}: {string.Join("; ", kinds)}. Part it with hurdles, or they cannot be fed apart.";
            }
        }

        foreach (var pen in housing.Pens.Where(p => p.Ewes.Length >= LargeGroup))
        {
            yield return $"{pen.Pen.Name} holds {pen.Ewes.Length} ewes: groups of under {LargeGroup} are advised where possible (DEFRA PB5162).";
        }
    }

    private static Phrase Fit(int housed, ImmutableArray<Ewe> without)
    {
        if (without.IsEmpty)
        {
            return housed == 0 ? "No ewe is in lamb: nobody is housed." : English.Plural(housed, $"The {housed} ewe fits.", $"All {housed} ewes fit.");
        }

        List<Phrase> named = [.. without.Take(MostNamed).Select(e => (Phrase)e)];
        if (without.Length > MostNamed)
        {
            named.Add($"{without.Length - MostNamed} more");
        }

        return $"The shed is too small: {English.Plural(without.Length, $"{without.Length} ewe has", $"{without.Length} ewes have")} no room (" + Phrase.List(named) + ").";
    }

    private static bool IsIn(HousedKind kind, PenPlan pen) => kind.Ewes.Any(e => pen.Ewes.Any(p => p.Tag == e.Tag));
}
