using PaperFlock.Flocks;
using PaperFlock.Layout;
using PaperFlock.Layout.Elements;
using PaperFlock.Planning;
using PaperFlock.Sheets.Theme;

namespace PaperFlock.Sheets.FeedCharts;

/// <summary>What the feed chart says in words.</summary>
internal static class FeedText
{
    private const double FootLeading = 1.15;

    public static string Lead(SheetContext context, TroughGroup group)
    {
        var concentrate = context.Flock.Feeds.Concentrate;
        return Block.Sentences(
            concentrate.Scoop is { } scoop
                ? $"{concentrate.Name}, level scoop of {context.Amounts.Feed(scoop.Kilograms)}."
                : $"{concentrate.Name}, weighed.",
            BesideIt(context.Flock.Feeds),
            group.Scanned ? "" : "Nobody has scanned them: fed as singles.");
    }

    private static string BesideIt(Feeds feeds)
    {
        var forage = Forage(feeds.Forage.Kind);
        var buckets = feeds.Buckets?.Name.ToLowerInvariant();
        return (feeds.Forage, buckets) switch
        {
            ({ Kind: ForageKind.Grass }, null) => "Grass to eat, clean water.",
            ({ Kind: ForageKind.Grass }, _) => $"Grass to eat, clean water, {buckets} topped up.",
            ({ AdLib: true }, null) => $"{forage} always in front of them, clean water.",
            ({ AdLib: true }, _) => $"{forage} always in front of them, clean water, {buckets} topped up.",
            (_, null) => $"{forage} twice a day in front of them, clean water.",
            _ => $"{forage} twice a day in front of them, clean water, {buckets} topped up.",
        };
    }

    /// <summary>What a stranger needs to know about that week, most pressing first.</summary>
    public static Element Notes(SheetContext context, TroughGroup group, int index, TextStyle style)
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
            bold.Add(FeedsFrom(week));
            plain.Add($"never over {context.Amounts.Ration(context.Flock.Feeds.LargestFeed.Kilograms)} a ewe at one time");
        }
        else if (week.KgPerEwePerDay > before.KgPerEwePerDay)
        {
            plain.Add($"up from {context.Amounts.Ration(before.KgPerEwePerDay)} a ewe");
        }

        plain.AddRange(context.Plan.Jobs
            .Where(j => j.Kind == JobKind.House && j.Date is { } d && d >= week.WeekBeginning && d <= end && group.Ewes.Any(e => e.Ewe.Group == j.Group?.Name))
            .Select(j => j.Date!.Value).Distinct().Order()
            .Select(d => $"indoors from {DateText.Short(d)}"));
        plain.AddRange(context.Flock.KeeperDays.Away
            .Where(a => a.From >= week.WeekBeginning && a.From <= end)
            .Select(a => a.Sitter is { } sitter
                ? $"{sitter} feeds from {DateText.Short(a.From)}"
                : $"sitter feeds from {DateText.Short(a.From)}"));
        if (week.WeekBeginning == group.FirstDue)
        {
            bold.Add($"first may lamb {DateText.Short(group.FirstDue)}");
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
            texts.Add(Block.Text(string.Join("; ", bold), Block.Bold(style)));
        }

        if (plain.Count > 0)
        {
            texts.Add(Block.Text(string.Join("; ", plain), style));
        }

        return new Column([.. texts], 1);
    }

    public static Element Foot(SheetContext context, TroughGroup group)
    {
        var method = context.Flock.Feeds.Method == FeedMethod.PerLamb
            ? $"{context.Amounts.Ration(context.Flock.Feeds.PerLamb.Kilograms)} for each lamb she carries, level from the feed week."
            : "What she needs, less what the forage gives her, made up with concentrate.";
        var difference = group.Difference.Length > 0 ? " " + group.Difference : "";
        return new Row(
            [
                new RowCell(Track.Share(), Block.BoldThen($"All {group.Ewes.Length} at the trough?", "Count heads. One hanging back or not eating is the one to look at now. Ring the keeper.", TypeScale.Body, FootLeading)),
                new RowCell(Track.Share(1.8), Block.BoldThen("How it is worked out.", method + difference, TypeScale.Body, FootLeading)),
                new RowCell(Track.Share(), Block.BoldThen("Too thin, too fat or off her feed", "overrules this chart. So does your vet. Never change the feed in one day.", TypeScale.Body, FootLeading)),
            ],
            16);
    }

    private static string FeedsFrom(FeedWeek week)
    {
        var day = DateText.Short(week.WeekBeginning);
        return week.FeedsPerDay switch
        {
            2 => $"two feeds a day from {day}",
            3 => $"three feeds a day from {day}",
            4 => $"four feeds a day from {day}",
            var feeds => English.Plural(feeds, $"{feeds} feed a day from {day}", $"{feeds} feeds a day from {day}"),
        };
    }

    private static string Forage(ForageKind kind) => kind switch
    {
        ForageKind.Hay => "Hay",
        ForageKind.Haylage => "Haylage",
        ForageKind.Silage => "Silage",
        ForageKind.Straw => "Straw",
        _ => "Grass",
    };
}
