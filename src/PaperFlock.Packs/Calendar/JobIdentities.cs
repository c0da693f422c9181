using System.IO.Hashing;
using PaperFlock.Packs.Figures;

namespace PaperFlock.Packs.Calendar;

/// <summary>What makes a job the same job when the flock file has changed and its day with it.</summary>
internal static class JobIdentities
{
    /// <summary>
    /// Of the holding, the year the tup goes in, the kind of job and its group; of the keeper's own jobs the title too, of those of a feed chart its code; and where several are alike, such
    /// as the changes of raddle, which of them it is by its window. Never of a day, so that a job that moves is moved in the calendar and not doubled.
    /// The year tells one season's jobs from the next's; it changes only if the tup's day is moved over New Year.
    /// </summary>
    /// <returns>One for each job of the plan, in its order, no two alike: what RFC 5545, section 3.8.4.7 calls a UID.</returns>
    public static ImmutableArray<string> Of(SeasonPlan plan)
    {
        var jobs = plan.Jobs.Select((job, i) => (Key: Key(plan, job), Window: (job.Earliest, job.Latest, Place: i))).ToList();
        return [.. jobs.Select(job => Uid(job.Key, jobs.Count(other => other.Key == job.Key && other.Window.CompareTo(job.Window) < 0)))];
    }

    /// <summary>Lengths in front, so that no two lists of words run together into one key.</summary>
    private static string Key(SeasonPlan plan, Job job)
    {
        string[] parts =
        [
            plan.Flock.Holding.Name,
            plan.Dates.TupIn.Year.ToString(CultureInfo.InvariantCulture),
            Codes.Of(job.Kind),
            job.Group is null ? "flock" : $"group {job.Group.Name}",
            job.Rule.Own?.Title ?? job.Rule.Chart ?? string.Empty,
        ];
        return string.Concat(parts.Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.Length}:{p}")));
    }

    private static string Uid(string key, int n) =>
        $"{Convert.ToHexString(XxHash128.Hash(Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture, $"{key}{n}"))))}@paperflock";
}
