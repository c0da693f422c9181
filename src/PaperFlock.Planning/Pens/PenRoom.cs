namespace PaperFlock.Planning.Pens;

/// <summary>What room is left in a pen.</summary>
/// <param name="Floor">Square metres.</param>
/// <param name="Trough">Metres; null where the file gives no trough, which then holds nobody back.</param>
internal readonly record struct PenRoom(decimal Floor, decimal? Trough)
{
    /// <summary>Metres of trough that a hurdle across it takes: Irish Farmers Journal, "Ticking all the right boxes when housing sheep",
    /// takes off 600 mm where a walk-through trough meets a barrier.</summary>
    private const decimal Hurdle = 0.6m;

    public static PenRoom Of(Pen pen) => new(pen.Length.Metres * pen.Width.Metres, pen.Trough?.Metres);

    public bool Holds(RoomNeeded ewe) => ewe.Floor <= Floor && (Trough is not { } trough || ewe.Trough <= trough);

    /// <summary>Whether what is left of the trough is enough for so many hurdles across it.</summary>
    public bool TakesHurdles(int hurdles) => Trough is not { } trough || hurdles * Hurdle <= trough;

    public PenRoom Less(RoomNeeded ewe) => new(Floor - ewe.Floor, Trough - ewe.Trough);

    public PenRoom Plus(RoomNeeded ewe) => new(Floor + ewe.Floor, Trough + ewe.Trough);

    /// <summary>How many ewes of one size it holds.</summary>
    public int Capacity(RoomNeeded ewe)
    {
        var byFloor = Floor / ewe.Floor;
        return (int)Math.Floor(Trough is { } trough ? Math.Min(byFloor, trough / ewe.Trough) : byFloor);
    }
}
