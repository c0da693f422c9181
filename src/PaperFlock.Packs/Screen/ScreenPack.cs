using System.Text.Json.Nodes;
using static PaperFlock.Packs.Figures.Shown;

namespace PaperFlock.Packs.Screen;

/// <summary>Packs as a screen asks for them.</summary>
public static class ScreenPack
{
    /// <summary>The next issue of a pack, or some of its sheets.</summary>
    /// <param name="name">Of the flock file.</param>
    /// <param name="options">An object: <c>sheets</c>, names or page codes with blanks between, null for all; <c>from</c> and <c>to</c>, a sitter's days, both included, or null; <c>changed</c>, only leaves that differ from an earlier issue; <c>draft</c>, to be looked at and not filed.</param>
    /// <param name="earlier">The PDF of the issue in the binder, and what it is called; null for none.</param>
    /// <returns>
    /// Documents to be turned into PDFs one by one, and what is to be said: <c>documents</c>, each its <c>file</c> name, <c>size</c> (<c>5 pages on 3 sheets of A4</c>), <c>pages</c> and <c>howTo</c>, lines
    /// on printing it; <c>said</c>, lines on what has changed; <c>nothing</c>, when no leaf has.
    /// </returns>
    /// <exception cref="PackRequestException">It cannot be had of this flock.</exception>
    public static (ImmutableArray<PackDocument> Documents, JsonObject Said) Make(PlannedFlock planned, string name, string options, EarlierFile? earlier)
    {
        var asked = JsonNode.Parse(options)!.AsObject();
        var request = Request(asked);
        var before = PackMaker.Earlier(planned.Plan!, earlier is null ? [] : [earlier]);
        if (request.Changed && before.Record is null)
        {
            throw new PackRequestException(before.Troubles is [var trouble, ..] ? trouble : "choose the PDF of the issue in your binder: what has changed is found by comparing with it");
        }

        var pack = Made(planned.Plan!, request, before);
        return (pack.Documents, new JsonObject
        {
            ["documents"] = List(pack.Documents, d => Document(d, PackFileNames.Of(name) + d.Suffix)),
            ["said"] = List(PackMaker.Changes(pack, before, dryRun: false), line => (JsonNode)line),
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

    /// <exception cref="PackRequestException">It cannot be had of this flock, or something does not fit an empty page.</exception>
    internal static Pack Made(SeasonPlan plan, PackRequest request, EarlierIssue? before)
    {
        try
        {
            return PackMaker.Make(plan, request, before);
        }
        catch (SheetException full)
        {
            throw new PackRequestException(full.Message);
        }
    }

    private static PackRequest Request(JsonObject asked)
    {
        var (kinds, codes, complaints) = SheetChoice.Read((asked["sheets"]?.GetValue<string>() ?? "").Split([' ', ','], StringSplitOptions.RemoveEmptyEntries));
        DateInterval? days = (asked["from"]?.GetValue<string>(), asked["to"]?.GetValue<string>()) switch
        {
            (null, null) => null,
            ({ } from, { } to) when ScreenDay.Day(from) is var first && ScreenDay.Day(to) is var last => first <= last
                ? new DateInterval(first, last)
                : throw new PackRequestException($"the last day, {ScreenText.Day(last)}, comes before the first, {ScreenText.Day(first)}"),
            _ => throw new PackRequestException("say the first and the last of the sitter's days"),
        };
        var changed = asked["changed"]?.GetValue<bool>() ?? false;
        var request = new PackRequest(kinds, days, Split: false, changed) { Codes = codes, Draft = asked["draft"]?.GetValue<bool>() ?? false };
        return complaints is [var complaint, ..] ? throw new PackRequestException(complaint)
            : days is not null && SheetChoice.WhyNotForDays(request) is { } whyNot ? throw new PackRequestException(whyNot)
            : request;
    }

    private static JsonObject Document(PackDocument document, string name) => new()
    {
        ["file"] = name + ".pdf",
        ["size"] = PrintAdvice.Size(document),
        ["pages"] = document.Pages.Count(),
        ["howTo"] = List(PrintAdvice.HowTo(document), line => (JsonNode)line),
    };
}
