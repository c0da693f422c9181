namespace PaperFlock.Planning;

/// <summary>What charts are called, on paper and by other programs.</summary>
public static class FeedCodes
{
    public const string Lambed = "FEED-LAMBED";

    public const string NotInLamb = "FEED-NOT-IN-LAMB";

    public static string Of(FeedKind kind, int number) => string.Create(CultureInfo.InvariantCulture, $"FEED-{Word(kind)}-{number}");

    private static string Word(FeedKind kind) => kind switch
    {
        FeedKind.Singles => "SINGLES",
        FeedKind.Twins => "TWINS",
        FeedKind.Triplets => "TRIPLETS",
        FeedKind.NotScanned => "NOT-SCANNED",
        _ => "MIXED",
    };
}
