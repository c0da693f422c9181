using PaperFlock.Diagnostics;

namespace PaperFlock.Planning;

/// <summary>Something about a ration that the keeper should know before it is fed.</summary>
/// <param name="Span">The value in the flock file that would change it.</param>
/// <param name="Chart">Code of the chart, where it is about one; empty otherwise.</param>
/// <param name="Ewes">Whom it concerns; empty where it concerns all.</param>
/// <param name="Number">What is, in the unit its kind says.</param>
/// <param name="Against">What it is held against.</param>
public sealed record FeedWarning(
    FeedWarningKind Kind, SourceSpan Span, string Chart, ImmutableArray<Ewe> Ewes, decimal Number, decimal Against) : PlanWarning(Span)
{
    /// <summary>The ewes whose lack is meant, where they share a trough.</summary>
    public FeedKind? Of { get; init; }
}

public enum FeedWarningKind
{
    /// <summary>An error: the caps leave less than can be measured. Kilograms a day she may have, and would need.</summary>
    NoRation,

    /// <summary>The caps leave her under nine tenths of her need. MJ she gets, and needs.</summary>
    NeedNotMet,

    /// <summary>The keeper's figure a lamb leaves her under nine tenths of her need. MJ she gets, and needs.</summary>
    CeilingTooLow,

    /// <summary>Forage alone cannot carry her. MJ she gets, and needs.</summary>
    ForageCannotCarry,

    /// <summary>So much a lamb, level for six weeks, is half as much again as the energy sum or more. Kilograms in all, and by the sum.</summary>
    LevelTooMuch,

    /// <summary>Half as large again as the energy sum, or more. Kilograms a day, and by the sum.</summary>
    OverEnergySum,

    /// <summary>The keeper's figure a lamb leaves her under three quarters of the energy sum. Kilograms a day, and by the sum.</summary>
    UnderEnergySum,

    /// <summary>Over a pound a lamb, no figure of the keeper's holding it. Kilograms a lamb, and a pound.</summary>
    OverAPoundALamb,

    /// <summary>The keeper's figure a lamb looks like pounds written as kilograms. Kilograms, and a pound.</summary>
    KilogramForAPound,

    /// <summary>Half of what she eats or more is concentrate. Shares of dry matter.</summary>
    MuchConcentrate,

    /// <summary>More feeds a day than three. Feeds.</summary>
    ManyFeeds,

    /// <summary>A twentieth short of protein, or more. Grams she gets, and needs.</summary>
    ShortOfProtein,

    /// <summary>The file's largest feed is over the cap. Kilograms.</summary>
    LargestFeedHeld,

    /// <summary>The file's ration with lambs at foot is over what she may have. Kilograms printed, and asked for.</summary>
    LambedHeld,

    /// <summary>She would be parted alone and eats with others. Kilograms a day she gets at the worst, and her own class's.</summary>
    Joined,

    /// <summary>Her kind shares a trough. Kilograms a day it gets at the worst, and its own class's.</summary>
    Shared,

    /// <summary>Half a scoop is more than a trough gets. Kilograms of the smallest, and of half a scoop.</summary>
    ScoopTooLarge,

    /// <summary>There are scales, and half a scoop is more than all at a trough get at one feed. Kilograms of the largest feed, and of half a scoop.</summary>
    ScoopOverTrough,

    /// <summary>Scoops are more than a tenth out. Kilograms measured, and meant.</summary>
    ScoopInexact,

    /// <summary>Others are weighed and she is not. Kilograms taken.</summary>
    Unweighed,
}
