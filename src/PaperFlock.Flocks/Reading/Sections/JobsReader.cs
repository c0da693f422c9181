namespace PaperFlock.Flocks.Reading.Sections;

internal static class JobsReader
{
    public static ImmutableArray<OwnJob> Read(Section top, SeasonDraft season, LambingPlace lambing) =>
        [.. top.ListBelow("jobs").Select(job => Job(job, season, lambing)).OfType<OwnJob>()];

    private static OwnJob? Job(Section job, SeasonDraft season, LambingPlace lambing)
    {
        var title = job.Require("title")?.AsText();
        var minutes = job.Find("minutes-per-ewe")?.AsNumber();
        var handled = job.Find("handled")?.AsFlag();
        var closed = job.Find("closed")?.AsFlag();
        var day = DiaryDate.Near(job.Find("on"), season);
        var before = job.Find("before")?.AsChoice<JobAnchor>();
        var after = job.Find("after")?.AsChoice<JobAnchor>();
        var days = job.Find("days") is { } field ? Days(field) : null;
        job.Bag.Add(lambing == LambingPlace.Outdoors && (before ?? after) == JobAnchor.Housing && (job.Find("before") ?? job.Find("after")) is { } anchored
            ? FlockMessages.NobodyHoused(anchored.Span, $"{anchored.Name}: housing", "write `first-due`, with the days counted from there")
            : null);

        if (!IsPlacedOnce(job, title) || title is null)
        {
            return null;
        }

        var window = days is not { } span || (before ?? after) is not { } anchor ? null
            : before is null ? new OwnJobWindow(anchor, span.Near, span.Far)
            : new OwnJobWindow(anchor, -span.Far, -span.Near);

        return day is null == window is null
            ? null
            : new OwnJob(title, day, window, minutes, handled ?? job.IsGiven("minutes-per-ewe"), closed ?? SaysClosed(title), job.Span);
    }

    private static bool IsPlacedOnce(Section job, string? title)
    {
        var placements = job.CountOfAlternatives;
        if (placements != 1)
        {
            job.Bag.Add(job.IsAlternativeMistyped ? null : FlockMessages.JobPlacement(job.Span, title ?? "", placements > 0));
            return false;
        }

        if (!job.IsGiven("on"))
        {
            job.Require("days");
        }
        else if (job.Find("days") is { } days)
        {
            job.Bag.Add(FlockMessages.DoesNotApply(days.KeySpan, "days", "beside `on`, which is one day", "take it out, or use `before` or `after`"));
            return false;
        }

        return true;
    }

    /// <summary>Two days, in either order, or one: the window is the same.</summary>
    private static (int Near, int Far)? Days(Field field) =>
        field.Value is Yaml.Scalar ? field.AsWhole() is { } one ? (one, one) : null
        : field.AsPair("[21, 14]") is var (first, second) ? (Math.Min(first, second), Math.Max(first, second))
        : null;

    private static bool SaysClosed(string title) =>
        title.Split([' ', ',', '.', ':', ';', '(', ')', '-'])
            .Any(word => string.Equals(word, "closed", StringComparison.OrdinalIgnoreCase));
}
