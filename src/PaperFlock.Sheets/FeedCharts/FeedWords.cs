using PaperFlock.Flocks;
using PaperFlock.Languages;
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
        var language = stationery.Language;
        var concentrate = stationery.Flock.Feeds.Concentrate;
        return Ink.Sentences(
            concentrate.Scoop is { } scoop
                ? language.Say($"{concentrate.Name}, level scoop of {stationery.Amounts.Feed(scoop.Kilograms)}.")
                : language.Say($"{concentrate.Name}, weighed."),
            BesideIt(stationery.Flock.Feeds, language),
            group.Scanned ? "" : language.Say("Nobody has scanned them: fed as singles."));
    }

    private static string BesideIt(Feeds feeds, Language language)
    {
        var forage = Forage(feeds.Forage.Kind, language);
        var buckets = feeds.Buckets?.Name.ToLowerInvariant();
        return (feeds.Forage, buckets) switch
        {
            ({ Kind: ForageKind.Grass }, null) => language.Say("Grass to eat, clean water."),
            ({ Kind: ForageKind.Grass }, _) => language.Say($"Grass to eat, clean water, {buckets} topped up."),
            ({ AdLib: true }, null) => language.Say($"{forage} always in front of them, clean water."),
            ({ AdLib: true }, _) => language.Say($"{forage} always in front of them, clean water, {buckets} topped up."),
            (_, null) => language.Say($"{forage} twice a day in front of them, clean water."),
            _ => language.Say($"{forage} twice a day in front of them, clean water, {buckets} topped up."),
        };
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
            bold.Add(stationery.Language.Say("build up to it over the week"));
        }
        else if (week.FeedsPerDay > before.FeedsPerDay)
        {
            bold.Add(FeedsFrom(week, stationery.Language));
            plain.Add(stationery.Language.Say($"never over {stationery.Amounts.Ration(stationery.Flock.Feeds.LargestFeed.Kilograms)} a ewe at one time"));
        }
        else if (week.KgPerEwePerDay > before.KgPerEwePerDay)
        {
            plain.Add(stationery.Language.Say($"up from {stationery.Amounts.Ration(before.KgPerEwePerDay)} a ewe"));
        }

        plain.AddRange(stationery.Plan.Jobs
            .Where(j => j.Id == JobIds.House && j.Date is { } d && d >= week.WeekBeginning && d <= end && group.Ewes.Any(e => e.Ewe.Group == j.Group?.Name))
            .Select(j => j.Date!.Value).Distinct().Order()
            .Select(d => stationery.Language.Say($"indoors from {stationery.Language.Days.Short(d)}")));
        plain.AddRange(stationery.Flock.KeeperDays.Away
            .Where(a => a.From >= week.WeekBeginning && a.From <= end)
            .Select(a => a.Sitter is { } sitter
                ? stationery.Language.Say($"{sitter} feeds from {stationery.Language.Days.Short(a.From)}")
                : stationery.Language.Say($"sitter feeds from {stationery.Language.Days.Short(a.From)}")));
        if (week.WeekBeginning == group.FirstDue)
        {
            bold.Add(stationery.Language.Say($"first may lamb {stationery.Language.Days.Short(group.FirstDue)}"));
            plain.Add(stationery.Language.Say("take out each ewe that has lambed"));
        }

        if (index == group.Weeks.Length - 1)
        {
            bold.Add(stationery.Language.Say("any not lambed: go on with this"));
        }

        if (week.Supply.Energy < week.Need.Energy * 0.9m)
        {
            plain.Add(stationery.Language.Say("short of what she needs: watch her condition"));
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
            ? stationery.Language.Say($"{stationery.Amounts.Ration(stationery.Flock.Feeds.PerLamb.Kilograms)} for each lamb she carries, level from the feed week.")
            : stationery.Language.Say("What she needs, less what the forage gives her, made up with concentrate.");
        var difference = group.Difference.Length > 0 ? " " + group.Difference : "";
        return new Row(
            [
                new RowCell(Track.Share(), Ink.BoldThen(stationery.Language.Say($"All {group.Ewes.Length} at the trough?"), stationery.Language.Say("Count heads. One hanging back or not eating is the one to look at now. Ring the keeper."), Fount.Body, FootLeading)),
                new RowCell(Track.Share(1.8), Ink.BoldThen(stationery.Language.Say("How it is worked out."), method + difference, Fount.Body, FootLeading)),
                new RowCell(Track.Share(), Ink.BoldThen(stationery.Language.Say("Too thin, too fat or off her feed"), stationery.Language.Say("overrules this chart. So does your vet. Never change the feed in one day."), Fount.Body, FootLeading)),
            ],
            16);
    }

    private static string FeedsFrom(FeedWeek week, Language language)
    {
        var day = language.Days.Short(week.WeekBeginning);
        return week.FeedsPerDay switch
        {
            2 => language.Say($"two feeds a day from {day}"),
            3 => language.Say($"three feeds a day from {day}"),
            4 => language.Say($"four feeds a day from {day}"),
            var feeds => language.Plural(feeds, $"{feeds} feed a day from {day}", $"{feeds} feeds a day from {day}"),
        };
    }

    private static string Forage(ForageKind kind, Language language) => kind switch
    {
        ForageKind.Hay => language.Say("Hay"),
        ForageKind.Haylage => language.Say("Haylage"),
        ForageKind.Silage => language.Say("Silage"),
        ForageKind.Straw => language.Say("Straw"),
        _ => language.Say("Grass"),
    };
}
