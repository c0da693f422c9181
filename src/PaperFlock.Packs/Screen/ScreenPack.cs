using static PaperFlock.Packs.Figures.Shown;

namespace PaperFlock.Packs.Screen;

/// <summary>Packs as a screen asks for them.</summary>
public static class ScreenPack
{
    private static readonly char[] Between = [' ', ','];

    /// <summary>Which issues of this pack a PDF knows: <c>issues</c>, the newest first, each its <c>number</c>, <c>day</c>, <c>what</c> was printed, <c>known</c>, whether it can be compared with, and <c>filed</c>, when the keeper has said that it is in the binder.</summary>
    /// <exception cref="PackRequestException">It knows none.</exception>
    public static JsonObject Issues(SeasonPlan plan, EarlierFile file)
    {
        var record = Known(plan, file).Record!;
        return new JsonObject
        {
            ["issues"] = List(record.Issues.Reverse(), issue => new JsonObject
            {
                ["number"] = issue.Number,
                ["day"] = ScreenText.Day(issue.On),
                ["what"] = issue.What,
                ["known"] = !issue.Leaves.IsEmpty,
                ["filed"] = issue.Number == record.Filed,
            }),
        };
    }

    /// <summary>The next issue of a pack, some of its sheets, or a draft.</summary>
    /// <param name="name">Of the flock file.</param>
    /// <param name="options">
    /// An object: <c>sheets</c>, names or page codes with blanks between, null for all; <c>from</c> and <c>to</c>, a sitter's days, both included, or null; <c>draft</c>, to be looked at and never filed;
    /// <c>changed</c>, only leaves that differ from an earlier issue; <c>since</c>, the number of the one in the binder, null for the one that is known to be, or else the last.
    /// </param>
    /// <param name="earlier">The PDF of the newest issue, and what it is called; null for none.</param>
    /// <param name="begins">Told of each kind of sheet before it is laid out: how many there have been, how many there are, and its page code.</param>
    /// <returns>
    /// Documents to be turned into PDFs one by one, and what is to be said: <c>documents</c>, each its <c>file</c> name, <c>size</c> (<c>5 pages on 3 sheets of A4</c>), <c>pages</c> and <c>howTo</c>, lines
    /// on printing it; <c>said</c>, lines on what has changed; <c>nothing</c>, when no leaf has.
    /// </returns>
    /// <exception cref="PackRequestException">It cannot be had of this flock.</exception>
    public static (ImmutableArray<PackDocument> Documents, JsonObject Said) Make(SeasonPlan plan, string name, string options, EarlierFile? earlier, Action<int, int, string> begins)
    {
        var asked = JsonNode.Parse(options)!.AsObject();
        var done = 0;
        var request = Request(asked);
        request = request with { Begins = sheet => begins(done++, PackSheets.All.Count(request.Wants), sheet.Code) };
        if (request.Changed && earlier is null)
        {
            throw new PackRequestException("choose the PDF of the issue in your binder: what has changed is found by comparing with it");
        }

        var before = earlier is null ? EarlierIssue.None : Known(plan, earlier);
        if (asked["since"]?.GetValue<int>() is { } since)
        {
            before = before.ComparedWith(since) with { Record = before.Record! with { Filed = since } };
        }

        var pack = Fitting(() => PackMaker.Make(plan, request, before));
        return (pack.Documents, new JsonObject
        {
            ["documents"] = List(pack.Documents, d => Document(d, PackFileNames.Of(name) + d.Suffix)),
            ["said"] = List(PackMaker.Changes(pack, before, dryRun: false), line => (JsonNode)ScreenWords.Of(line)),
            ["nothing"] = pack.Documents.IsEmpty,
        });
    }

    /// <summary>A leaf that belongs to no flock: the printer's test page, or how to use a pack.</summary>
    public static (ImmutableArray<PackDocument> Documents, JsonObject Said) Leaf(bool isTest, bool isLetter)
    {
        var paper = isLetter ? Paper.Letter : Paper.A4;
        var (leaf, name) = isTest ? (PackMaker.TestPage(paper), $"testpage-{paper}") : (PackMaker.Guide(paper), "how-to-use-this-pack");
        return ([leaf], new JsonObject { ["documents"] = new JsonArray(Document(leaf, name)), ["said"] = new JsonArray(), ["nothing"] = false });
    }

    /// <summary>Sheets by name or page code, with blanks between; all where there are no words.</summary>
    /// <exception cref="PackRequestException">There is no such sheet.</exception>
    internal static PackRequest Choice(string words)
    {
        var (sheets, codes, complaints) = SheetChoice.Read(words.Split(Between, StringSplitOptions.RemoveEmptyEntries));
        return complaints is [var complaint, ..] ? throw new PackRequestException(complaint) : new PackRequest(sheets) { Codes = codes };
    }

    /// <exception cref="PackRequestException">Something does not fit an empty page.</exception>
    internal static T Fitting<T>(Func<T> made)
    {
        try
        {
            return made();
        }
        catch (SheetException full)
        {
            throw new PackRequestException(full.Message);
        }
    }

    private static EarlierIssue Known(SeasonPlan plan, EarlierFile file)
    {
        var known = PackMaker.Earlier(plan, [file]);
        return known.Record is null ? throw new PackRequestException(known.Troubles[0]) : known;
    }

    private static PackRequest Request(JsonObject asked)
    {
        DateInterval? days = (asked["from"]?.GetValue<string>(), asked["to"]?.GetValue<string>()) switch
        {
            (null, null) => null,
            ({ } from, { } to) when ScreenDay.Day(from) is var first && ScreenDay.Day(to) is var last => first <= last
                ? new DateInterval(first, last)
                : throw new PackRequestException($"the last day, {ScreenText.Day(last)}, comes before the first, {ScreenText.Day(first)}"),
            _ => throw new PackRequestException("say the first and the last of the sitter's days"),
        };
        bool Is(string option) => asked[option]?.GetValue<bool>() ?? false;
        var request = Choice(asked["sheets"]?.GetValue<string>() ?? "") with { Days = days, Changed = Is("changed"), Draft = Is("draft") };
        return days is not null && SheetChoice.WhyNotForDays(request) is { } whyNot ? throw new PackRequestException(whyNot) : request;
    }

    private static JsonObject Document(PackDocument document, string name) => new()
    {
        ["file"] = name + ".pdf",
        ["size"] = PrintAdvice.Size(document),
        ["pages"] = document.Pages.Count(),
        ["howTo"] = List(PrintAdvice.HowTo(document), line => (JsonNode)line),
    };
}
