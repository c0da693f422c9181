namespace PaperFlock.Packs.Tests;

/// <summary>Flock files to run the program on.</summary>
internal static class Samples
{
    /// <summary>Two ewes, one of them with a weak date: small enough to print in a moment.</summary>
    public const string TwoEwes =
        """
        paperflock: 1
        holding:
          name: Hollin Bank
          location: {latitude: 54.46, longitude: -2.74}
          time-zone: Europe/London
        season:
          tup-in: 2026-08-10
        ewes:
          - tag: ZZ 0123456 00101
            name: Bracken
            marks: [2026-08-14]
            scan: 2
          - tag: ZZ 0123456 00102
            name: Sorrel
        """;

    /// <summary>The same with a second file of leaves for the wall.</summary>
    public const string TwoEwesOnALargerPlanner = TwoEwes + "\n\nprint: {planner: A3}\n";

    /// <summary>One error, at line 7, column 11.</summary>
    public const string BadDate =
        """
        paperflock: 1
        holding:
          name: Hollin Bank
          location: {latitude: 54.46, longitude: -2.74}
          time-zone: Europe/London
        season:
          tup-in: 2026-02-30
        ewes:
          - tag: ZZ 0123456 00101
        """;

    /// <summary>The top of the repository.</summary>
    public static string Root { get; } = FindRoot();

    public static string HollinBank { get; } = Path.Combine(Root, "flocks", "hollin-bank.yaml");

    public static string KanukaFlat { get; } = Path.Combine(Root, "flocks", "kanuka-flat.yaml");

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "PaperFlock.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests must run inside the repository.");
    }
}
