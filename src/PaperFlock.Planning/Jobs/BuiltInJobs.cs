using PaperFlock.Flocks;

namespace PaperFlock.Planning.Jobs;

internal static class BuiltInJobs
{
    /// <summary>The trade's calendar for one group; what hangs on a day the group does not have is left off.</summary>
    public static IEnumerable<JobNeed> For(Flock flock, GroupAnchors anchors)
    {
        var rules = TuppingRules.For(anchors.Group, flock.Practice, named: flock.Groups.Length > 1)
            .Concat(LambingRules.For(flock.Practice, flock.Housing.Lambing, flock.Feeds.Buckets is not null));
        foreach (var rule in rules)
        {
            if (anchors.DayOf(rule.Anchor, flock.Practice) is { } day)
            {
                yield return new(
                    rule.Id,
                    rule.Title,
                    anchors.Group,
                    day.PlusDays(rule.Window.Earliest),
                    day.PlusDays(rule.Window.Best),
                    day.PlusDays(rule.Window.Latest),
                    rule.Handled,
                    rule.IsFixed,
                    Minutes: null,
                    rule.Reason,
                    rule.Source,
                    rule.RidesWith,
                    Remark: null,
                    NotAfter: null,
                    anchors.Group.Span)
                {
                    Basis = anchors.BasisOf(rule.Anchor, flock.Practice),
                };
            }
        }
    }
}
