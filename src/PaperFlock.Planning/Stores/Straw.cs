namespace PaperFlock.Planning.Stores;

internal static class Straw
{
    /// <summary>Bedding straw, kg a ewe a week: Irish Farmers Journal, "Cut workload with advanced planning", gives 7 for lowland and
    /// 4 to 5 for hill ewes; the upper figure, because a wet bed cannot wait for a delivery.</summary>
    public static decimal KgAWeek(Ground ground) => ground == Ground.Hill ? 5m : 7m;
}
