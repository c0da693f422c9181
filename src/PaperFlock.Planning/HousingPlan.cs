using PaperFlock.Planning.Pens;

namespace PaperFlock.Planning;

/// <param name="Pens">One for each pen in the file, in its order; empty where the ewes lamb outdoors.</param>
/// <param name="WithoutRoom">Ewes the shed is too small for, first due first; empty when all fit.</param>
public sealed record HousingPlan(ImmutableArray<PenPlan> Pens, ImmutableArray<Ewe> WithoutRoom)
{
    /// <summary>Nobody is placed in a pen.</summary>
    public static HousingPlan None { get; } = new([], []);

    /// <summary>Null where nobody is housed.</summary>
    public RoomWithLambs? WithLambs { get; init; }
}

/// <summary>Whether the floor of the shed is enough once there are lambs.</summary>
/// <param name="Ewes">Housed this season.</param>
/// <param name="Holds">How many of them it holds with lambs at foot.</param>
/// <param name="FullOn">If none is turned out: the likely day from which there is too little floor; null if there is always enough.</param>
/// <param name="DaysThatFit">The most days after lambing at which turning out keeps enough floor all season; null if it is enough without, or never.</param>
public sealed record RoomWithLambs(int Ewes, int Holds, LocalDate? FullOn, int? DaysThatFit);

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
    int CapacityWithLambs)
{
    /// <summary>Whether all can still eat at once when hurdles part it; so where no trough is given.</summary>
    public bool HoldsHurdles(int hurdles) => new PenRoom(FloorThere, TroughThere).Less(new RoomNeeded(FloorNeeded, TroughNeeded)).TakesHurdles(hurdles);
}
