using static PaperFlock.Packs.Figures.Shown;

namespace PaperFlock.Packs.Screen;

/// <summary>The rows of the sheets that are filled in by pencil, in the order of the paper. A ewe is her place in the flock file, from 0.</summary>
public static class ScreenSeason
{
    public static JsonObject Of(SeasonPlan plan)
    {
        JsonArray Ewes(IEnumerable<EwePlan> ewes) => List(ewes, e => (JsonNode)plan.Ewes.IndexOf(e));
        return new JsonObject
        {
            ["teeth"] = Ewes(PencilLists.BeforeTheTup(plan)),
            ["marks"] = List(PencilLists.TupAndRaddle(plan), group => new JsonObject
            {
                ["group"] = group.Group.Group.Name,
                ["tup"] = group.Group.Group.Tup,
                ["with"] = ScreenText.Span(group.Group.Group.TupIn, group.Group.Group.TupOut),
                ["ewes"] = Ewes(group.Ewes),
            }),
            ["scan"] = Ewes(PencilLists.ScanDay(plan)),
            ["losses"] = Ewes(plan.Ewes),
            // What one that lost her lambs calls for.
            ["care"] = SafeLossText.Long,
            ["lambed"] = List(PencilLists.WhoLambsWhen(plan), row => new JsonObject { ["ewe"] = plan.Ewes.IndexOf(row.Ewe), ["likely"] = ScreenText.Day(row.Window.Likely) }),
        };
    }
}
