namespace PaperFlock.Sheets;

/// <summary>What stores are called and how they were reckoned.</summary>
public static class StoreText
{
    public static string Name(StoreItem item, Flock flock) => item.Name ?? item.Kind switch
    {
        StoreKind.Forage => FeedText.Forage(flock.Feeds.Forage.Kind),
        StoreKind.Bedding => "Bedding straw",
        _ => "Water",
    };

    public static string Basis(StoreItem item, Flock flock) => item.Kind switch
    {
        StoreKind.Concentrate => "the feed charts added up, each ewe to the last day she is likely to lamb, then with lambs to turnout",
        StoreKind.Forage => $"{Amounts.Figure(item.Rate * 100, "0.##")} % of live weight a day as dry matter in lamb, more in milk; ewes not in lamb too; waste is for the margin",
        StoreKind.Buckets when flock.Feeds.Buckets is { } buckets => $"1 for every {buckets.EwesPerBucket} ewes, new every {buckets.Days} days, by the maker's figures in the flock file",
        StoreKind.Bedding => $"{Amounts.Figure(item.Rate, "0")} kg a ewe a week from housing to turnout (Irish Farmers Journal)",
        _ => $"up to {Amounts.Figure(item.Rate, "0")} litres a day, the upper end for ewes of their weight, in lamb and in milk (NRC 2007)",
    };

    /// <summary>"3 bags".</summary>
    public static string Packs(int packs, StorePack pack) => pack switch
    {
        StorePack.Bag => English.Count(packs, "bag", "bags"),
        StorePack.Bale => English.Count(packs, "bale", "bales"),
        _ => English.Count(packs, "bucket", "buckets"),
    };
}
