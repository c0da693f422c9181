namespace PaperFlock.Planning.Stores;

internal static class Water
{
    // NRC (2007), Nutrient Requirements of Small Ruminants, as reported by a United States extension article on water for
    // sheep, gallons converted: pregnant ewes of 59, 73 and 91 kg drink up to 6.2, 7.2 and 8.5 litres a day.
    private static readonly (decimal Weight, decimal Litres)[] Table = [(59m, 6.2m), (73m, 7.2m), (91m, 8.5m)];

    /// <summary>The upper end of what a pregnant ewe drinks, litres a day: interpolated by weight, never under the table's
    /// lightest ewe, and carried on at the same slope above its heaviest.</summary>
    /// <param name="weight">Live weight, kg.</param>
    public static decimal LitresADay(decimal weight)
    {
        if (weight <= Table[0].Weight)
        {
            return Table[0].Litres;
        }

        var upper = Array.FindIndex(Table, row => weight <= row.Weight);
        var to = upper < 0 ? Table.Length - 1 : upper;
        var (low, high) = (Table[to - 1], Table[to]);
        return low.Litres + ((weight - low.Weight) * (high.Litres - low.Litres) / (high.Weight - low.Weight));
    }
}
