namespace PaperFlock.Cli;

/// <summary>Flock files with no command before them, as when they are dropped on the program: their packs are made beside them.</summary>
internal static class DroppedFiles
{
    public static bool Are(IReadOnlyList<string> args, Host host) =>
        args.Count > 0 && (IsCalledAFlock(args[0]) || IsThere(args[0], host));

    /// <summary>Though it may not be there, which is then to be complained of.</summary>
    private static bool IsCalledAFlock(string arg) =>
        arg.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || arg.EndsWith(".yml", StringComparison.OrdinalIgnoreCase);

    /// <summary>A command wins over a file or folder that happens to be called like it: those have an ending or a path.</summary>
    private static bool IsThere(string arg, Host host)
    {
        if (arg.StartsWith('-') || !arg.AsSpan().ContainsAny('.', '/', '\\'))
        {
            return false;
        }

        var full = host.FullPath(arg);
        return File.Exists(full) || Directory.Exists(full);
    }
}
