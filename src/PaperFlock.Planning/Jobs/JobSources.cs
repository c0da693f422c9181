namespace PaperFlock.Planning.Jobs;

/// <summary>Where a window comes from when no publication sets it.</summary>
internal static class JobSources
{
    public const string CommonPractice = "common practice";
    public const string FlockFile = "the flock file";
}
