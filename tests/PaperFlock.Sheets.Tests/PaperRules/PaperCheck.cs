namespace PaperFlock.Sheets.Tests.PaperRules;

internal static class PaperCheck
{
    private const int MostOfEach = 3;

    public static void Keeps(PackInHand pack)
    {
        var broken = Rules.Broken(pack);
        Assert.True(broken.IsEmpty, Summary(broken));
    }

    /// <summary>The first few of each rule on each sheet: one fault of a design repeats on every page.</summary>
    public static string Summary(ImmutableArray<BrokenRule> broken) => $"{broken.Length} broken\n" + string.Join("\n", broken
        .GroupBy(b => (b.Sheet, b.Rule))
        .Select(g => $"{g.Key.Sheet} | {g.Key.Rule} | {g.Count()} times\n    {string.Join("\n    ", g.Take(MostOfEach).Select(b => $"{b.Where}: {b.What}"))}"));
}
