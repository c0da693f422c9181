using System.Collections.Immutable;
using PaperFlock.Flocks;

namespace PaperFlock.Planning;

/// <param name="Pens">One for each pen in the file, in its order.</param>
/// <param name="EwesWithoutRoom">How many ewes the shed is too small for; 0 when all fit.</param>
/// <param name="Words">Whether they fit, plainly.</param>
/// <param name="Source">The published table followed.</param>
public sealed record HousingPlan(ImmutableArray<PenPlan> Pens, int EwesWithoutRoom, string Words, string Source);

/// <param name="FloorNeeded">Square metres the ewes planned into it want.</param>
/// <param name="TroughNeeded">Metres of trough they want.</param>
/// <param name="Capacity">How many average ewes of this flock it could hold, by floor and trough together.</param>
/// <param name="CapacityWithLambs">How many ewes with lambs at foot its floor holds.</param>
public sealed record PenPlan(
    Pen Pen,
    ImmutableArray<Ewe> Ewes,
    decimal FloorNeeded,
    decimal FloorThere,
    decimal TroughNeeded,
    decimal? TroughThere,
    int Capacity,
    int CapacityWithLambs);
