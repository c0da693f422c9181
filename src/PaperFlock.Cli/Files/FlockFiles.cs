using System.IO.Enumeration;

namespace PaperFlock.Cli.Files;

/// <summary>The flock files somebody meant: files by name, whole folders, and names with <c>*</c> or <c>?</c> in them.</summary>
internal static class FlockFiles
{
    private static readonly ImmutableArray<string> Endings = [".yaml", ".yml"];

    /// <summary>
    /// A folder stands for the flock files in it, not those in folders below. A shell usually fills in <c>*</c> and <c>?</c> before we
    /// see them; the one of Windows does not, so we do, in the name of the file and not of its folder.
    /// </summary>
    /// <param name="typed">As typed.</param>
    /// <returns>Paths to be shown as they are, never empty, each file once: in the order typed, those of one folder by name.</returns>
    /// <exception cref="UsageException">A folder holds none, or nothing is called that. A single file that is not there is found out when it is read.</exception>
    public static ImmutableArray<string> Find(IEnumerable<string> typed, Host host)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        return [.. typed.SelectMany(t => Find(t, host)).Where(f => seen.Add(host.FullPath(f)))];
    }

    private static IEnumerable<string> Find(string typed, Host host) => FileTrouble.Told<IEnumerable<string>>(
        () =>
        {
            var full = host.FullPath(typed);
            if (Directory.Exists(full))
            {
                var inside = Names(full, name => Endings.Contains(Path.GetExtension(name), StringComparer.OrdinalIgnoreCase));
                return inside.Count > 0 ? inside.Select(name => Beside(typed, name)) : throw new UsageException($"there is no flock file in {typed}: their names end in .yaml");
            }

            var pattern = Path.GetFileName(typed);
            if (!pattern.AsSpan().ContainsAny('*', '?') || File.Exists(full))
            {
                return [typed];
            }

            var folder = Path.GetDirectoryName(typed) ?? string.Empty;
            var fullFolder = host.FullPath(folder.Length == 0 ? "." : folder);
            var matching = Directory.Exists(fullFolder) ? Names(fullFolder, name => FileSystemName.MatchesSimpleExpression(pattern, name, OperatingSystem.IsWindows())) : [];
            return matching.Count > 0 ? matching.Select(name => Beside(folder, name)) : throw new UsageException($"no file is called {typed}");
        },
        why => Messages.CannotRead(typed, why));

    /// <summary>By name, so that no two computers put them in another order; hidden ones are nobody's flock.</summary>
    private static List<string> Names(string folder, Func<string, bool> wanted) =>
    [
        .. Directory.EnumerateFiles(folder)
            .Select(f => Path.GetFileName(f))
            .Where(name => !name.StartsWith('.') && wanted(name))
            .Order(StringComparer.Ordinal),
    ];

    private static string Beside(string folder, string name) => folder.Length == 0 || folder == "." ? name : Path.Combine(folder, name);
}
