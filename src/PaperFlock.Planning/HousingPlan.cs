namespace PaperFlock.Planning;

/// <param name="Pens">One for each pen in the file, in its order; empty where the ewes lamb outdoors.</param>
/// <param name="WithoutRoom">Ewes the shed is too small for, first due first; empty when all fit.</param>
/// <param name="Kinds">Ewes to be housed by whose ration they get, whether there is room for them or not.</param>
public sealed record HousingPlan(ImmutableArray<PenPlan> Pens, ImmutableArray<Ewe> WithoutRoom, ImmutableArray<HousedKind> Kinds)
{
    /// <summary>Nobody is placed in a pen.</summary>
    public static HousingPlan None { get; } = new([], [], []);
}

public sealed record HousedKind(FeedKind Kind, ImmutableArray<Ewe> Ewes);

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
