using PaperFlock.Cli.Commands;
using PaperFlock.Flocks.Drafting;
using PaperFlock.Flocks.Lists;
using PaperFlock.Flocks.Places;
using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Cli.Begin;

/// <summary>The questions of <c>begin</c>, in the order somebody thinks of the answers.</summary>
/// <param name="given">What was typed after an option; null when it was not used.</param>
/// <param name="goodRows">Rows of a list that are refused do not keep the others out.</param>
internal sealed class Interview(Func<string, string?> given, bool goodRows, LocalDate today, Asker asker, Host host)
{
    private const string UsualName = "My flock";
    private const string Lambs = "lambs";

    /// <summary>What was taken for granted and should be looked at, a sentence each. After <see cref="Ask"/>.</summary>
    public ImmutableArray<string> Assumed { get; private set; } = [];

    /// <summary>Rows of the list were refused, and the others taken. After <see cref="Ask"/>.</summary>
    public bool HasLeftOut { get; private set; }

    /// <exception cref="UsageException">Something after an option is no answer, or the answers end too soon.</exception>
    public FlockDraft Ask()
    {
        var name = asker.Ask(
            "--name", "What is the holding called?", UsualName, UsualName, text => Tried(text, FlockDraft.Trial with { Name = text }));
        var keeper = asker.Ask(
            "--keeper", "What is your name? It goes on the sheet for whoever looks after the ewes when you are away.", "", "leave it out",
            text => Tried(text, FlockDraft.Trial with { Keeper = text }));

        var place = asker.Ask<Place?>(
            "--place",
            """
            Where are the sheep? The place gives sunrise and sunset, and is printed for the emergency services.
            Type a grid reference from an Ordnance Survey map (NY 480 046), or latitude and longitude (54.46, -2.74; south and west are negative).
            """,
            null,
            "leave it out",
            text => PlaceText.Read(text) is var read && read.Place is { } meant ? Tried(meant, FlockDraft.Trial with { Place = meant }) : read);
        var byPlace = place is null ? null : PlaceZones.Of(place, today);
        var usualZone = byPlace?.Id ?? HomeZone();
        var zone = asker.Ask("--time-zone", "Which time zone is that? Type its name, its chief town or the country.", usualZone, usualZone, PlaceZones.Read);
        var country = zone == byPlace?.Id ? byPlace.CountryCode : PlaceZones.CountryOf(zone);

        var usual = SeasonStart.Usual((place ?? PlaceZones.MiddleOf(zone))?.IsSouthern ?? false, today);
        var start = Start(usual);
        var ewes = asker.Ask(
            "--ewes", "How many ewes go to him? Or type the name of a list of them, saved from a spreadsheet as CSV.", DraftEwe.Unnamed(20), "20", text => Ewes(text, start));
        var usualPaper = UsualPaper.In(country);
        var paper = asker.Ask("--paper", "Which paper does the printer hold, A4 or Letter?", usualPaper, usualPaper.ToString(), ReadPaper);
        asker.ThrowIfWrong();

        var draft = new FlockDraft(name, keeper.Length == 0 ? null : keeper, place, zone, country, start, ewes, paper);
        Assumed = [.. Assumptions(draft, byPlace, usual)];
        return draft;
    }

    private IEnumerable<string> Assumptions(FlockDraft draft, PlaceZone? byPlace, SeasonStart usual)
    {
        if (byPlace is null)
        {
            yield return "nothing says where the sheep are, so the paper has no sunrise, and a blank line for the emergency services: write `location` under `holding`";
            if (given("--time-zone") is null)
            {
                yield return $"the time zone is taken to be {draft.TimeZone}: if they go by another there, change it under `holding`";
            }
        }
        else if (given("--time-zone") is null && draft.TimeZone == byPlace.Id)
        {
            yield return byPlace.Others.IsEmpty
                ? $"the time zone is {byPlace.Id}, by the place"
                : $"the time zone is taken to be {byPlace.Id}, by the nearest town: if they go by {string.Join(" or ", byPlace.Others)} there, change it under `holding`";
        }

        if (given("--tup-in") is null && given("--lambing-from") is null && draft.Start == usual)
        {
            yield return "the tup goes in on the usual day: put your own under `season`";
        }

        if (draft.Ewes.Any(e => e.IsUnnamed))
        {
            yield return "each tag is a line to write on: type what is on the ears in their place, or write it on the cards";
        }
    }

    private SeasonStart Start(SeasonStart usual)
    {
        var isLambing = given("--lambing-from") is not null;
        if (isLambing && given("--tup-in") is not null)
        {
            asker.Complain("--tup-in and --lambing-from are two ways of stating the same date: keep one of them");
        }

        return asker.Ask(
            isLambing ? "--lambing-from" : "--tup-in",
            """
            On which day does the tup go in? Type a date, such as 2026-11-05 or 5 Nov 2026.
            Or type `lambs` and the day you want the first lambs: lambs 1 April 2027.
            """,
            usual,
            $"{LocalDatePattern.Iso.Format(usual.TupIn)}, for lambs from {ScreenText.Day(usual.FirstLambs)}",
            text => Season(text, isLambing));
    }

    public static (SeasonStart? Answer, string? WhyNot) Season(string text, bool isLambing) => WrittenDate.Days(text) switch
    {
        _ when text.StartsWith(Lambs, StringComparison.OrdinalIgnoreCase) => Season(text[Lambs.Length..].Trim(), isLambing: true),
        [] => (null, $"'{text}' is no date: write it year first, such as 2026-11-05"),
        [var day] => Tried(new SeasonStart(day, isLambing)),
        var days => (null, ScreenText.TwoDays(text, days)),
    };

    private (ImmutableArray<DraftEwe> Answer, string? WhyNot) Ewes(string text, SeasonStart start)
    {
        if (!File.Exists(host.FullPath(text)))
        {
            return DraftEwe.Counted(text) is { } counted ? (counted, null) : ([], $"'{text}' is neither a number of ewes from 1 to {DraftEwe.MostUnnamed} nor a file that is there");
        }

        var bag = new DiagnosticBag();
        var (csv, table) = ListTables.Open(text, given(ListTables.Option), EweList.IsKnown, bag, host);
        var list = EweList.Read(csv, table, start.TupIn.Year, bag, ewes =>
        {
            var reading = (FlockDraft.Trial with { Start = start, Ewes = [.. ewes] }).Read(_ => today);
            return (reading.Source, [.. reading.Diagnostics, .. PackMaker.Unprintable(reading)]);
        });
        HasLeftOut = list.HasErrors;
        return AddEwesCommand.Report(text, list, goodRows, host) is { } whyNot ? ([], whyNot) : (list.Good, null);
    }

    private static (Paper Answer, string? WhyNot) ReadPaper(string text) =>
        Enum.GetValues<Paper>().Where(p => string.Equals(p.ToString(), text, StringComparison.OrdinalIgnoreCase)).ToArray() is [var paper]
            ? (paper, null)
            : (default, $"there is no paper '{text}' here: A4 or Letter");

    /// <summary>That of this computer; that of Britain when it does not say.</summary>
    private string HomeZone() => host.HomeZone() is { } home && PlaceZones.MiddleOf(home) is not null ? home : "Europe/London";

    private static (T? Answer, string? WhyNot) Tried<T>(T answer, FlockDraft draft)
        where T : class =>
        draft.WhyNot() is { } whyNot ? (null, whyNot)
        : PackMaker.Unprintable(draft.Read()) is [var missing, ..] ? (null, $"{missing.Message}: {missing.Advice}")
        : (answer, null);

    private static (SeasonStart? Answer, string? WhyNot) Tried(SeasonStart start) => Tried(start, FlockDraft.Trial with { Start = start });
}
