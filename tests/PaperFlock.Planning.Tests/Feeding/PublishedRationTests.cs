using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning.Tests.Feeding;

/// <summary>The two rations worked in print, to the rounding they print. Both hold forage intake fixed.</summary>
public sealed class PublishedRationTests
{
    // Both examples use a concentrate of 86 % dry matter and 12.5 MJ/kg dry matter.
    private static readonly Concentrate Published = FeedingSample.Nuts;

    /// <summary>Vet Times, 27 November 2017, Panel 1: a 70 kg ewe with triplets, three weeks before lambing, needs 16.7 MJ
    /// (Wright and Genever 2016); good silage at 1.4 % of live weight (Vipond et al. 2009) gives 0.98 kg at 10.8 MJ.</summary>
    [Fact]
    public void Silage_for_triplets_three_weeks_out()
    {
        var silage = FeedingSample.Hay with { Kind = ForageKind.Silage, Energy = 10.8m };
        var capacity = ForageIntake.Capacity(silage, 70);
        Assert.Equal(0.98, capacity, 1e-9);

        var diet = RationBalance.Meeting(16.7, capacity, silage, Published);
        Assert.Equal(569, diet.FreshConcentrate(Published) * 1000, 0.5); // carried through unrounded

        // With the gap rounded to 6.2 MJ, as the panel prints it, 577 g; the panel's own 576 drops the fraction.
        var rounded = RationBalance.Meeting(6.2 + (capacity * 10.8), capacity, silage, Published).FreshConcentrate(Published) * 1000;
        Assert.Equal(577, rounded, 0.5);
        Assert.Equal(576, Math.Floor(rounded));
    }

    /// <summary>Hybu Cig Cymru, "Feeding ewes in late pregnancy": a 75 kg ewe just before lambing needs 19 MJ; average hay at
    /// 1.5 % of live weight gives 1.13 kg at 8.5 MJ, 9.6 MJ; the gap of 9.4 MJ is 0.9 kg of concentrate.</summary>
    [Fact]
    public void Hay_just_before_lambing()
    {
        var hay = FeedingSample.Hay with { Energy = 8.5m };
        var capacity = ForageIntake.Capacity(hay, 75);
        Assert.Equal(1.125, capacity, 1e-9);
        Assert.Equal(9.6, capacity * 8.5, 0.05);

        var diet = RationBalance.Meeting(19, capacity, hay, Published);
        Assert.Equal(0.878, diet.FreshConcentrate(Published), 0.0005); // carried through unrounded
        Assert.Equal(0.9, Math.Round(diet.FreshConcentrate(Published), 1));

        // With the gap rounded to 9.4 MJ, as the page prints it.
        Assert.Equal(0.874, RationBalance.Meeting(9.4 + (capacity * 8.5), capacity, hay, Published).FreshConcentrate(Published), 0.0005);
    }
}
