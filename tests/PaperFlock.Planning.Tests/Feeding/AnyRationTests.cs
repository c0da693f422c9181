using CsCheck;
using NodaTime;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>Every cap, for every row of every chart by every method, of flocks drawn from fixed seeds.</summary>
public sealed class AnyRationTests
{
    private static readonly LocalDate AsOf = new(2026, 11, 30);

    [Theory]
    [InlineData("3mntSwNl9Mt4")]
    [InlineData("7fn4Z2apQv31")]
    [InlineData("55DmKdnKOmo2")]
    [InlineData("d__fKJBx1EB2")]
    [InlineData("fvju0uuBBg91")]
    public void No_ration_of_any_flock_breaks_a_cap(string seed) =>
        AnyFlock.Drawn.Sample(flock => FeedingParts.Agree(SeasonPlanner.Plan(flock, AsOf)), seed: seed, iter: 200);
}
