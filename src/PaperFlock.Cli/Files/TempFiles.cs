using System.IO.Enumeration;

namespace PaperFlock.Cli.Files;

/// <summary>The names of files that are there while others are put in place, and after a run that was killed while it did.</summary>
internal static class TempFiles
{
    private const string Start = ".paperflock-";
    private const string End = ".tmp";

    /// <summary>Short, because a long one might not fit; random, because two runs must not share it.</summary>
    public static string NewName(string folder) => Path.Combine(folder, $"{Start}{Path.GetRandomFileName()}{End}");

    /// <summary>Takes away what runs have left that were killed. Another run that is at work holds its files open, and they stay.</summary>
    /// <param name="folder">Full path of a folder that is there.</param>
    public static void Sweep(string folder) => Quietly(() =>
    {
        foreach (var left in Directory.EnumerateFiles(folder, Start + "*" + End).Where(f => IsOurs(Path.GetFileName(f))).ToList())
        {
            Quietly(() => new FileStream(left, FileMode.Open, FileAccess.ReadWrite, FileShare.None, bufferSize: 1, FileOptions.DeleteOnClose).Dispose());
        }
    });

    /// <summary>Tidying up must not hide the trouble that made it necessary.</summary>
    public static void Quietly(Action tidy)
    {
        try
        {
            tidy();
        }
        catch (Exception e) when (FileTrouble.IsOfFiles(e))
        {
            // Nothing better can be done, and the message about the first trouble is on its way.
        }
    }

    /// <summary>Whether it is a name that <see cref="NewName"/> gives: eight characters, a full stop, three.</summary>
    private static bool IsOurs(string name) => FileSystemName.MatchesSimpleExpression($"{Start}????????.???{End}", name, ignoreCase: false);
}
