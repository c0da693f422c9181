using PaperFlock.Cli.Wiring;

namespace PaperFlock.Cli.Files;

/// <summary>Two flocks whose packs would have one name: the second would be written over the first.</summary>
internal static class PackClashes
{
    /// <param name="packs">In the order of the flock files.</param>
    /// <param name="suffixes">All that may follow a flock's name in the name of a document.</param>
    /// <exception cref="UsageException">There are such; every pair is named.</exception>
    public static void Refuse(IEnumerable<PackPaths> packs, IReadOnlyList<string> suffixes)
    {
        // Case may not count on this disk.
        var taken = new Dictionary<string, PackPaths>(StringComparer.OrdinalIgnoreCase);
        var clashes = new List<string>();
        foreach (var pack in packs)
        {
            var names = suffixes.Select(s => (Full: pack.FullName(s), Shown: pack.ShownFile(s + PackPaths.Pdf))).ToList();
            foreach (var (full, shown) in names)
            {
                if (taken.TryGetValue(full, out var other))
                {
                    clashes.Add(Messages.SamePack(other.Flock, pack.Flock, shown));
                    break;
                }
            }

            foreach (var (full, _) in names)
            {
                taken.TryAdd(full, pack);
            }
        }

        if (clashes.Count > 0)
        {
            throw new UsageException(string.Join($"\n{Messages.Complaint(string.Empty)}", clashes));
        }
    }

    /// <param name="days">A pack for some days has them in its name, which no other can then have by chance.</param>
    public static IReadOnlyList<string> Suffixes(bool split, bool days) =>
        days ? [string.Empty] : split ? PackBinding.SplitSuffixes : PackBinding.Suffixes;
}
