namespace PaperFlock.Planning.Stores;

internal static class Water
{
    // NRC (2007), Nutrient Requirements of Small Ruminants, as reported by a United States extension article on water for
    // sheep, gallons converted: pregnant ewes of 59, 73 and 91 kg drink up to 6.2, 7.2 and 8.5 litres a day.
    private static readonly (decimal Weight, decimal Litres)[] Table = [(59m, 6.2m), (73m, 7.2m), (91m, 8.5m)];

    // The same tables as reported by Capital Journal: ewes in milk of 59, 73 and 91 kg drink 2, 2.36 and 2.8 US gallons of 3.785 litres.
    private static readonly (decimal Weight, decimal Litres)[] InMilk = [(59m, 7.57m), (73m, 8.93m), (91m, 10.6m)];

    /// <summary>The upper end of what a pregnant ewe drinks, litres a day: interpolated by weight, never under the table's
    /// lightest ewe, and carried on at the same slope above its heaviest.</summary>
    /// <param name="weight">Live weight, kg.</param>
    public static decimal LitresADay(decimal weight) => At(Table, weight);

    /// <summary>What a ewe in milk drinks, litres a day, read off in the same way.</summary>
    /// <param name="weight">Live weight, kg.</param>
    public static decimal LitresInMilk(decimal weight) => At(InMilk, weight);

    private static decimal At((decimal Weight, decimal Litres)[] table, decimal weight)
    {
        if (weight <= table[0].Weight)
        {
            return table[0].Litres;
        }

        var upper = Array.FindIndex(table, row => weight <= row.Weight);
        var to = upper < 0 ? table.Length - 1 : upper;
        var (low, high) = (table[to - 1], table[to]);
        return low.Litres + ((weight - low.Weight) * (high.Litres - low.Litres) / (high.Weight - low.Weight));
    }
}
