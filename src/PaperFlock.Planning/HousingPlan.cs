using System.Collections.Immutable;
using PaperFlock.Flocks;
using PaperFlock.Planning.Feeding;

namespace PaperFlock.Planning;

/// <param name="Pens">One for each pen in the file, in its order; empty where the ewes lamb outdoors.</param>
/// <param name="WithoutRoom">Ewes the shed is too small for, first due first; empty when all fit.</param>
/// <param name="Classes">Ewes to be housed that can eat one ration, whether there is room for them or not.</param>
public sealed record HousingPlan(ImmutableArray<PenPlan> Pens, ImmutableArray<Ewe> WithoutRoom, ImmutableArray<FeedingClass> Classes)
{
    /// <summary>Nobody is placed in a pen.</summary>
    public static HousingPlan None { get; } = new([], [], []);
}

/// <param name="FloorNeeded">Square metres the ewes planned into it want.</param>
/// <param name="TroughNeeded">Metres of trough they want.</param>
/// <param name="Capacity">How many average ewes of this flock it could hold, by floor and trough together.</param>
public sealed record PenPlan(
    Pen Pen,
    ImmutableArray<Ewe> Ewes,
    decimal FloorNeeded,
    decimal FloorThere,
    decimal TroughNeeded,
    decimal? TroughThere,
    int Capacity);
