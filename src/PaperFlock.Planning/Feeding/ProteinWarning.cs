
namespace PaperFlock.Planning.Feeding;

/// <summary>What to say where a ration looks short of protein.</summary>
internal static class ProteinWarning
{
    /// <summary>Under this share of the need is worth a word; the reckoning is no finer.</summary>
    private const decimal Worth = 0.05m;

    /// <returns>Empty when the ration is within a twentieth of the need, or over it, in every week.</returns>
    public static string Words(IReadOnlyList<FeedWeek> weeks)
    {
        var runs = WeekWords.Runs(weeks, w => Shortfall(w) >= Worth ? true : null);
        return string.Join(' ', runs.Select(run =>
            $"{WeekWords.Sentence(WeekWords.When(run))} this ration looks {WeekWords.Percent([.. run.Select(Shortfall)])} short of protein: ask the feed merchant or vet about a concentrate with more."));
    }

    private static decimal Shortfall(FeedWeek week) => 1 - (week.Supply.Protein / week.Need.Protein);
}
