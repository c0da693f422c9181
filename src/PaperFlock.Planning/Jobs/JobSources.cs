
namespace PaperFlock.Planning.Jobs;

/// <summary>Where a window comes from when no publication sets it.</summary>
internal static class JobSources
{
    public static string CommonPractice() => "common practice";

    public static string FlockFile() => "the flock file";

    /// <summary>Why a job is on a day that the keeper has written down.</summary>
    public static string FileGivesTheDay() => "the day the flock file gives";
}
