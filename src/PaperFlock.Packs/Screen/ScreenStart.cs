using PaperFlock.Flocks.Drafting;
using PaperFlock.Flocks.Editing;
using PaperFlock.Flocks.Places;

namespace PaperFlock.Packs.Screen;

/// <summary>A first flock file from a few answers, as <c>begin</c> makes it.</summary>
public static class ScreenStart
{
    /// <param name="answers">
    /// Texts as typed: <c>name</c>, <c>keeper</c>, <c>place</c> (a grid reference, or latitude and longitude), <c>zone</c> (empty to go by the place), <c>tupIn</c> or <c>lambingFrom</c> (a date; neither for the usual day), <c>ewes</c> (how
    /// many), <c>paper</c> (A4 or Letter; empty for what is usual there). What is left out has its usual answer.
    /// </param>
    /// <returns><c>text</c> and the <c>name</c> of the file, and <c>assumed</c>, what should be looked at; or <c>wrong</c>, each the <c>field</c> and its <c>message</c>.</returns>
    public static JsonObject Begin(string answers, string today)
    {
        var typed = JsonNode.Parse(answers)!.AsObject();
        string Answer(string field) => typed[field]?.GetValue<string>().Trim() ?? "";
        var wrong = new List<(string Field, string Message)>();

        var name = Answer("name") is { Length: > 0 } said ? said : "My flock";
        var (place, whyNot) = Answer("place") is { Length: > 0 } written ? PlaceText.Read(written) : (null, null);
        Refuse("place", whyNot);
        var (zone, whyNoZone) = Answer("zone") is { Length: > 0 } named ? PlaceZones.Read(named)
            : (place is null ? "Europe/London" : PlaceZones.Of(place, ScreenDay.Day(today)).Id, null);
        Refuse("zone", whyNoZone);
        var country = zone is null ? null : PlaceZones.CountryOf(zone);
        var start = Start(Answer("lambingFrom"), isLambing: true, "lambingFrom") ?? Start(Answer("tupIn"), isLambing: false, "tupIn") ?? SeasonStart.Usual((place ?? PlaceZones.MiddleOf(zone ?? ""))?.IsSouthern ?? false, ScreenDay.Day(today));
        var ewes = DraftEwe.Counted(Answer("ewes") is { Length: > 0 } many ? many : "20");
        Refuse("ewes", ewes is null ? NoNumber(Answer("ewes")) : null);
        var paper = Answer("paper").Length == 0 ? UsualPaper.In(country) : Answer("paper").Equals("Letter", StringComparison.OrdinalIgnoreCase) ? Paper.Letter : Paper.A4;
        var keeper = Answer("keeper") is { Length: > 0 } who ? who : null;

        Try("name", FlockDraft.Trial with { Name = name });
        Try("keeper", FlockDraft.Trial with { Keeper = keeper });
        Try(Answer("lambingFrom").Length > 0 ? "lambingFrom" : "tupIn", FlockDraft.Trial with { Start = start });
        if (wrong.Count > 0)
        {
            return new JsonObject { ["wrong"] = Figures.Shown.List(wrong, w => new JsonObject { ["field"] = w.Field, ["message"] = w.Message }) };
        }

        var draft = new FlockDraft(name, keeper, place, zone!, country, start, ewes!.Value, paper);
        var file = PackFileNames.FlockFile(name);
        return new JsonObject { ["text"] = FlockFileText.Of(draft, file), ["name"] = file, ["assumed"] = Figures.Shown.List(Assumed(draft, Answer("zone")), line => (JsonNode)line) };

        SeasonStart? Start(string text, bool isLambing, string field)
        {
            if (text.Length == 0)
            {
                return null;
            }

            var read = ScreenDay.Read(text, today);
            Refuse(field, ScreenDay.WhyNone(text, read));
            return read["day"] is { } day ? new SeasonStart(ScreenDay.Day(day["iso"]!.GetValue<string>()), isLambing) : null;
        }

        void Refuse(string field, string? message)
        {
            if (message is not null)
            {
                wrong.Add((field, message));
            }
        }

        void Try(string field, FlockDraft draft) => Refuse(field, draft.WhyNot());
    }

    /// <summary>So many ewes whose tags are to be written on their cards, in place of those that are in the flock.</summary>
    /// <returns><c>text</c>, the flock file.</returns>
    /// <exception cref="PackRequestException">It is no such number, or the file is laid out in a way that cannot be changed.</exception>
    public static JsonObject Number(string text, string name, string ewes)
    {
        var counted = DraftEwe.Counted(ewes) ?? throw new PackRequestException(NoNumber(ewes));
        var file = FlockFile.OpenAsIs(name, Encoding.UTF8.GetBytes(text), out _);
        var before = file?.ItemsOf(FlockPlace.Top, "ewes").Length ?? 0;
        var edit = file?.Apply(
        [
            AddToList.Ewes(counted.Select(ewe => FlockValue.Section(ewe.Lines))),
            .. Enumerable.Range(0, before).Reverse().Select(i => new RemoveFromList(FlockPlace.Top, "ewes", i)),
        ]);
        return edit?.File is { } changed ? new JsonObject { ["text"] = Encoding.UTF8.GetString(changed.ToBytes()) } : throw new PackRequestException("the list of ewes in the file cannot be changed here");
    }

    private static string NoNumber(string typed) => $"'{typed}' is no number of ewes from 1 to {DraftEwe.MostUnnamed}";

    private static IEnumerable<string> Assumed(FlockDraft draft, string zone)
    {
        if (draft.Place is null)
        {
            yield return "nothing says where the sheep are: the paper has no sunrise, and a blank line for the emergency services";
        }

        if (zone.Length == 0)
        {
            yield return draft.Place is null ? $"the time zone is taken to be {draft.TimeZone}" : $"the time zone is {draft.TimeZone}, by the place";
        }

        yield return "each tag is a line to write on: type what is on the ears in their place, or write it on the cards";
    }
}
