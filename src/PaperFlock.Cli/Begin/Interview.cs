using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using NodaTime;
using PaperFlock.Cli.Csv;
using PaperFlock.Cli.Files;
using PaperFlock.Cli.Lists;
using PaperFlock.Cli.Places;
using PaperFlock.Cli.Wiring;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Flocks.Reading;
using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Cli.Begin;

/// <summary>The questions, in the order somebody thinks of the answers.</summary>
internal sealed class Interview(BeginOptions options, LocalDate today, Asker asker, Host host, ILine line)
{
    /// <summary>More is a commercial flock, or a slip.</summary>
    private const int MostEwes = 2000;

    /// <exception cref="UsageException">Something after an option is no answer, or the answers end too soon.</exception>
    public FlockDraft Ask()
    {
        var name = asker.Ask(new Question<string>(
            "--name", options.Name, BeginMessages.AskName, BeginMessages.UsualName, BeginMessages.UsualName, text => Tried(text, FlockDraft.Trial with { Name = text })));
        var keeper = asker.Ask(new Question<string>(
            "--keeper", options.Keeper, BeginMessages.AskKeeper, string.Empty, BeginMessages.LeaveOut, text => Tried(text, FlockDraft.Trial with { Keeper = text })));

        var stated = asker.Ask(new Question<Place?>("--place", options.Place, BeginMessages.AskPlace, null, Shown(StandIn()), PlaceText.Read));
        var place = stated ?? StandIn();
        var byPlace = PlaceZones.Of(place, today);
        var zone = asker.Ask(new Question<string>("--time-zone", options.TimeZone, BeginMessages.AskZone, byPlace.Id, byPlace.Id, Zone));
        var country = zone == byPlace.Id ? byPlace.CountryCode : PlaceZones.CountryOf(zone);

        var start = Start(place);
        var ewes = asker.Ask(new Question<ImmutableArray<DraftEwe>>(
            "--ewes", options.Ewes, BeginMessages.AskEwes, DraftEwe.Unnamed(20), "20", text => Ewes(text, start)));
        var usualPaper = UsualPaper.In(country);
        var paper = asker.Ask(new Question<Paper>("--paper", options.Paper, BeginMessages.AskPaper, usualPaper, usualPaper.ToString(), ReadPaper));
        asker.ThrowIfWrong();

        var draft = new FlockDraft(name, keeper.Length == 0 ? null : keeper, place, stated is null, zone, country, start, ewes, paper);
        Assumed = [.. Assumptions(draft, byPlace)];
        return draft;
    }

    /// <summary>What was taken for granted and should be looked at, a sentence each. After <see cref="Ask"/>.</summary>
    public ImmutableArray<string> Assumed { get; private set; } = [];

    private IEnumerable<string> Assumptions(FlockDraft draft, PlaceZone byPlace)
    {
        if (draft.PlaceIsStandIn)
        {
            yield return BeginMessages.StandInPlace;
        }
        else if (options.TimeZone is null && draft.TimeZone == byPlace.Id)
        {
            yield return byPlace.Others.IsEmpty ? BeginMessages.ZoneFromPlace(byPlace.Id) : BeginMessages.ZoneNearBorder(byPlace.Id, byPlace.Others);
        }

        if (options is { TupIn: null, LambingFrom: null } && draft.Start == SeasonStart.Usual(draft.Place.IsSouthern, today))
        {
            yield return BeginMessages.UsualDate;
        }

        if (draft.Ewes.Any(e => e.IsUnnamed))
        {
            yield return BeginMessages.UnknownTags;
        }
    }

    private SeasonStart Start(Place place)
    {
        var usual = SeasonStart.Usual(place.IsSouthern, today);
        if (options is { LambingFrom: not null, TupIn: not null })
        {
            asker.Complain(BeginMessages.TwoStarts);
        }

        return options.LambingFrom is { } lambing
            ? asker.Ask(new Question<SeasonStart>("--lambing-from", lambing, BeginMessages.AskSeason, usual, string.Empty, text => Season(text, isLambing: true)))
            : asker.Ask(new Question<SeasonStart>("--tup-in", options.TupIn, BeginMessages.AskSeason, usual, BeginMessages.Shown(usual), text => Season(text, isLambing: false)));
    }

    private (SeasonStart? Answer, string? WhyNot) Season(string text, bool isLambing)
    {
        if (text.StartsWith(BeginMessages.Lambs, StringComparison.OrdinalIgnoreCase))
        {
            return Season(text[BeginMessages.Lambs.Length..].Trim(), isLambing: true);
        }

        return WrittenDate.Read(text) switch
        {
            ({ } day, { } other) when day != other => (null, BeginMessages.TwoDays(text, day, other)),
            (null, null) => (null, BeginMessages.NotADay(text)),
            var (day, other) => Tried(new SeasonStart((day ?? other)!.Value, isLambing), start => FlockDraft.Trial with { Start = start }),
        };
    }

    /// <summary>Rows of the list were refused, and the others taken.</summary>
    public bool HasLeftOut { get; private set; }

    private (ImmutableArray<DraftEwe> Answer, string? WhyNot) Ewes(string text, SeasonStart start)
    {
        if (File.Exists(host.FullPath(text)))
        {
            return Listed(text, start);
        }

        var isCount = int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count);
        return isCount && count is >= 1 and <= MostEwes
            ? (DraftEwe.Unnamed(count), null)
            : ([], BeginMessages.NotACount(text, MostEwes));
    }

    private (ImmutableArray<DraftEwe> Answer, string? WhyNot) Listed(string file, SeasonStart start)
    {
        var found = new DiagnosticBag();
        var table = CsvTable.Read(file, FlockBytes.Read(file, host), found);
        var rows = ListTrial.Of(
            EweList.Read(table, start.TupIn.Year, found),
            ewes =>
            {
                var reading = Read(FlockDraft.Trial with { Start = start, Ewes = [.. ewes.Select(e => e.Ewe!)] });
                return (reading.Source, reading.Diagnostics);
            },
            found);
        HasLeftOut = found.HasErrors;
        return ListReport.Write(file, table.Source, rows, found, options.GoodRows, host)
            ? ([.. rows.Select(r => r.Ewe).OfType<DraftEwe>()], null)
            : ([], ListMessages.Refused(file, rows.Any(r => r.Ewe is not null)));
    }

    private static (string? Answer, string? WhyNot) Zone(string text) =>
        PlaceZones.Named(text) is { } zone ? (zone, null) : (null, BeginMessages.NotAZone(text));

    private static (Paper Answer, string? WhyNot) ReadPaper(string text) =>
        Enum.GetValues<Paper>().Where(p => string.Equals(p.ToString(), text, StringComparison.OrdinalIgnoreCase)).ToArray() is [var paper]
            ? (paper, null)
            : (default, BeginMessages.NotAPaper(text));

    /// <summary>Somewhere in the time zone of the command line or of this computer; in Britain when neither says.</summary>
    private Place StandIn() =>
        (options.TimeZone is { } typed && PlaceZones.Named(typed) is { } named ? PlaceZones.MiddleOf(named) : null)
        ?? (host.HomeZone() is { } home ? PlaceZones.MiddleOf(home) : null)
        ?? PlaceZones.MiddleOf("Europe/London")!;

    private static string Shown(Place place) =>
        string.Create(CultureInfo.InvariantCulture, $"{place.Latitude}, {place.Longitude}, to be put right later");

    private (string? Answer, string? WhyNot) Tried(string answer, FlockDraft draft) => Tried(answer, _ => draft);

    /// <summary>Whatever the reader would refuse is refused here, in its words: what it takes is laid down in one place.</summary>
    private (T? Answer, string? WhyNot) Tried<T>(T answer, Func<T, FlockDraft> draft)
        where T : class
    {
        return Read(draft(answer)).Diagnostics.FirstOrDefault(d => d.Severity == Severity.Error) is { } wrong
            ? (null, $"{wrong.Message}: {wrong.Advice}")
            : (answer, null);
    }

    private FlockReading Read(FlockDraft draft) =>
        line.Read(Messages.UnnamedPack, Encoding.UTF8.GetBytes(FlockFileText.Of(draft, Messages.UnnamedPack)));
}
