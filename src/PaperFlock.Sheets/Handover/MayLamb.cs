namespace PaperFlock.Sheets.Handover;

/// <summary>Every ewe whose time may come while the keeper is away. The list of ewes to watch is cut short in a large flock; this one never is.</summary>
internal static class MayLamb
{
    /// <returns>The ewes whose window, nine chances in ten, touches the days, soonest first.</returns>
    public static ImmutableArray<EwePlan> Ewes(SeasonPlan plan, Absence away) =>
    [
        .. plan.Ewes
            .Where(e => e.Due is { } due && due.Earliest <= away.To && due.Latest >= away.From)
            .OrderBy(e => e.Due!.Likely)
            .ThenBy(e => e.Ewe.Tag, StringComparer.Ordinal),
    ];

    /// <returns>One paragraph; empty when it is nobody's time.</returns>
    public static ImmutableArray<Element> Words(SeasonPlan plan, Absence away)
    {
        var ewes = Ewes(plan, away);
        if (ewes.IsEmpty)
        {
            return [];
        }

        var names = ewes.SelectMany((e, i) => new[] { new Run(i > 0 ? ", " : "", TypeScale.Body), Who.Called(e.Ewe, TypeScale.Body) });
        return [new Text([new Run($"{English.Count(ewes.Length, "ewe", "ewes")}, soonest first:" + " ", TypeScale.BodyBold), .. names, new Run(".", TypeScale.Body)])];
    }
}
