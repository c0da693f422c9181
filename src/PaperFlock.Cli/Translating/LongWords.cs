using PaperFlock.Sheets;

namespace PaperFlock.Cli.Translating;

/// <summary>
/// What does not fit its sheet in a translator's words, and does in English, is no fault of the program: the catalogue is said to be wrong, as for
/// any other mistake in it.
/// </summary>
internal static class LongWords
{
    /// <param name="path">The catalogue, as typed; null where everything is said in English.</param>
    /// <param name="work">Composes, prints and writes; returns one of <see cref="ExitStatus"/>.</param>
    /// <param name="inEnglish">Composes the same in English.</param>
    /// <exception cref="SheetException">Something does not fit in English either.</exception>
    public static int Guard(string? path, Surroundings surroundings, Func<int> work, Action inEnglish)
    {
        try
        {
            return work();
        }
        catch (SheetException e) when (path is not null)
        {
            inEnglish();
            surroundings.Error.WriteLine(Words.TooLong(path, e.Sheet, e.Reason));
            return ExitStatus.FlockErrors;
        }
    }
}
