namespace PaperFlock.Planning.Pens;

/// <summary>
/// What one pregnant ewe wants of a straw-bedded pen. Floor: DEFRA PB5162 (lowland 1.2 to 1.4 m², hill 1.0 to 1.2 m²); trough:
/// Teagasc, sheep housing space requirements (400, 500, 600 mm at 50, 70, 90 kg).
/// </summary>
/// <param name="Floor">Square metres.</param>
/// <param name="Trough">Metres of trough, for all to eat concentrate at once.</param>
internal readonly record struct RoomNeeded(decimal Floor, decimal Trough)
{
    /// <summary>DEFRA PB5162 lets winter-shorn ewes have a tenth less floor, and no less trough.</summary>
    private const decimal ShornFloor = 0.9m;

    /// <param name="weight">Live weight, kg.</param>
    /// <param name="shorn">Shorn at housing.</param>
    public static RoomNeeded For(decimal weight, Ground ground, bool shorn)
    {
        // Each table gives a range of floor for a range of weight: the light end of one is taken with the light end of the other.
        var floor = ground == Ground.Hill
            ? Along(weight, 45, 1.0m, 65, 1.2m)
            : Along(weight, 60, 1.2m, 90, 1.4m);
        return new RoomNeeded(shorn ? Math.Round(floor * ShornFloor, 4) : floor, Along(weight, 50, 0.4m, 90, 0.6m));
    }

    /// <summary>Square metres of straw for a ewe with lambs to six weeks: DEFRA PB5162, 2.0 to 2.2 m², hill 1.8 to 2.0; the roomier figure.</summary>
    public static decimal WithLambs(Ground ground) => ground == Ground.Hill ? 2.0m : 2.2m;

    /// <summary>How many ewes with lambs a floor holds.</summary>
    /// <param name="floor">Square metres.</param>
    public static int EwesWithLambs(decimal floor, Ground ground) => (int)Math.Floor(floor / WithLambs(ground));

    /// <summary>What none of some ewes want together, the first of them, the first two, and so on.</summary>
    public static RoomNeeded[] Sums(IEnumerable<RoomNeeded> ewes)
    {
        var sums = new List<RoomNeeded> { default };
        foreach (var ewe in ewes)
        {
            sums.Add(new RoomNeeded(sums[^1].Floor + ewe.Floor, sums[^1].Trough + ewe.Trough));
        }

        return [.. sums];
    }

    /// <summary>What several ewes want over fewer of them.</summary>
    public RoomNeeded Less(RoomNeeded fewer) => new(Floor - fewer.Floor, Trough - fewer.Trough);

    // Never under the table's lightest ewe; carried on at the same slope above its heaviest, who must not be squeezed for
    // being off the table. Whole square centimetres and tenths of a millimetre add up exactly in any order.
    private static decimal Along(decimal weight, decimal light, decimal least, decimal heavy, decimal most) =>
        Math.Round(least + (Math.Max(0, weight - light) * (most - least) / (heavy - light)), 4);
}
