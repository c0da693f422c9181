using System.IO.Enumeration;

namespace PaperFlock.Cli.Files;

/// <summary>The names of files that are there while a pack is put in place, and after a run that was killed while it did.</summary>
internal static class TempFiles
{
    /// <summary>Says what is to be put back; see <see cref="UndoNote"/>.</summary>
    public const string NoteName = Start + "undo";

    public const string LockName = Start + "lock";

    private const string Start = ".paperflock-";
    private const string End = ".tmp";

    /// <summary>Short, because a long one might not fit; random, because where there are no locks two runs must not share it.</summary>
    public static string NewName(string folder) => Path.Combine(folder, $"{Start}{Path.GetRandomFileName()}{End}");

    /// <summary>Whether it is a name that <see cref="NewName"/> gives: eight characters, a full stop, three.</summary>
    public static bool IsOurs(string name) => FileSystemName.MatchesSimpleExpression($"{Start}????????.???{End}", name, ignoreCase: false);

    /// <param name="folder">Full path of a folder in which no run is at work, because this one has its lock.</param>
    public static void Sweep(string folder)
    {
        foreach (var left in Directory.EnumerateFiles(folder, Start + "*" + End).Where(f => IsOurs(Path.GetFileName(f))).ToList())
        {
            Quietly(() => File.Delete(left));
        }
    }

    /// <summary>Whether a run was cut short here, or one is at work. In a folder that may not be looked into there is no telling.</summary>
    public static bool IsIn(string folder)
    {
        try
        {
            return Directory.Exists(folder) && Directory.EnumerateFiles(folder, Start + "*").Any();
        }
        catch (UnauthorizedAccessException)
        {
            return false;
        }
    }

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
}
