using PaperFlock.Flocks;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.House;

namespace PaperFlock.Sheets.FeedCharts;

/// <summary>What the feed chart says in words.</summary>
internal static class FeedWords
{
    private const double FootLeading = 1.15;

    public static string Lead(Stationery stationery, TroughGroup group)
    {
        var feeds = stationery.Flock.Feeds;
        var scoop = feeds.Concentrate.Scoop is { } s ? $", level scoop of {stationery.Amounts.Feed(s.Kilograms)}" : ", weighed";
        var forage = feeds.Forage.Kind == ForageKind.Grass ? "Grass to eat" : $"{Forage(feeds.Forage.Kind)} {(feeds.Forage.AdLib ? "always" : "twice a day")} in front of them";
        var buckets = feeds.Buckets is { } b ? $", {b.Name.ToLowerInvariant()} topped up" : "";
        var unscanned = group.Scanned ? "" : " Nobody has scanned them: fed as singles.";
        return $"{feeds.Concentrate.Name}{scoop}. {forage}, clean water{buckets}.{unscanned}";
    }

    /// <summary>What a stranger needs to know about that week, most pressing first.</summary>
    public static Element Notes(Stationery stationery, TroughGroup group, int index, TextStyle style)
    {
        var week = group.Weeks[index];
        var before = index > 0 ? group.Weeks[index - 1] : null;
        var end = week.WeekBeginning.PlusDays(6);
        var bold = new List<string>();
        var plain = new List<string>();
        if (before is null)
        {
            bold.Add("build up to it over the week");
        }
        else if (week.FeedsPerDay > before.FeedsPerDay)
        {
            bold.Add($"{Number(week.FeedsPerDay)} feeds a day from {Days.Short(week.WeekBeginning)}");
            plain.Add($"never over {stationery.Amounts.Ration(stationery.Flock.Feeds.LargestFeed.Kilograms)} a ewe at one time");
        }
        else if (week.KgPerEwePerDay > before.KgPerEwePerDay)
        {
            plain.Add($"up from {stationery.Amounts.Ration(before.KgPerEwePerDay)} a ewe");
        }

        plain.AddRange(stationery.Plan.Jobs
            .Where(j => j.Id == JobIds.House && j.Date is { } d && d >= week.WeekBeginning && d <= end && group.Ewes.Any(e => e.Ewe.Group == j.Group?.Name))
            .Select(j => j.Date!.Value).Distinct().Order()
            .Select(d => $"indoors from {Days.Short(d)}"));
        plain.AddRange(stationery.Flock.KeeperDays.Away
            .Where(a => a.From >= week.WeekBeginning && a.From <= end)
            .Select(a => $"{a.Sitter ?? "sitter"} feeds from {Days.Short(a.From)}"));
        if (week.WeekBeginning == group.FirstDue)
        {
            bold.Add($"first may lamb {Days.Short(group.FirstDue)}");
            plain.Add("take out each ewe that has lambed");
        }

        if (index == group.Weeks.Length - 1)
        {
            bold.Add("any not lambed: go on with this");
        }

        if (week.Supply.Energy < week.Need.Energy * 0.9m)
        {
            plain.Add("short of what she needs: watch her condition");
        }

        var texts = new List<Element>();
        if (bold.Count > 0)
        {
            texts.Add(Ink.Text(string.Join("; ", bold), Ink.Bold(style)));
        }

        if (plain.Count > 0)
        {
            texts.Add(Ink.Text(string.Join("; ", plain), style));
        }

        return new Column([.. texts], 1);
    }

    public static Element Foot(Stationery stationery, TroughGroup group)
    {
        var method = stationery.Flock.Feeds.Method == FeedMethod.PerLamb
            ? $"{stationery.Amounts.Ration(stationery.Flock.Feeds.PerLamb.Kilograms)} for each lamb she carries, level from the feed week."
            : "What she needs, less what the forage gives her, made up with concentrate.";
        var difference = group.Difference.Length > 0 ? " " + group.Difference : "";
        return new Row(
            [
                new RowCell(Track.Share(), Ink.BoldThen($"All {group.Ewes.Length} at the trough?", "Count heads. One hanging back or not eating is the one to look at now. Ring the keeper.", Fount.Body, FootLeading)),
                new RowCell(Track.Share(1.8), Ink.BoldThen("How it is worked out.", method + difference, Fount.Body, FootLeading)),
                new RowCell(Track.Share(), Ink.BoldThen("Too thin, too fat or off her feed", "overrules this chart. So does your vet. Never change the feed in one day.", Fount.Body, FootLeading)),
            ],
            16);
    }

    private static string Forage(ForageKind kind) => kind switch
    {
        ForageKind.Hay => "Hay",
        ForageKind.Haylage => "Haylage",
        ForageKind.Silage => "Silage",
        ForageKind.Straw => "Straw",
        _ => "Grass",
    };

    private static string Number(int feeds) => feeds switch { 2 => "two", 3 => "three", 4 => "four", _ => feeds.ToString(System.Globalization.CultureInfo.InvariantCulture) };
}
