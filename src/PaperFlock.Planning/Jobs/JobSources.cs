using PaperFlock.Languages;

namespace PaperFlock.Planning.Jobs;

/// <summary>Where a window comes from when no publication sets it.</summary>
internal static class JobSources
{
    public static string CommonPractice(Language language) => language.Say("common practice");

    public static string FlockFile(Language language) => language.Say("the flock file");

    /// <summary>Why a job is on a day that the keeper has written down.</summary>
    public static string FileGivesTheDay(Language language) => language.Say("the day the flock file gives");
}
