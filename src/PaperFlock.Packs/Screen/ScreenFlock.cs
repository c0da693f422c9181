using NodaTime.Text;
using PaperFlock.Flocks.Drafting;
using PaperFlock.Flocks.Editing;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Packs.Screen;

/// <summary>A flock file on a screen: what it says, what is wrong with it, and what it is after an edit.</summary>
public static class ScreenFlock
{
    /// <summary>What a form of the flock file is made of, and which sheets there are to ask for.</summary>
    public static JsonObject Describe() => new()
    {
        ["form"] = FlockForm.Json(),
        ["sheets"] = Figures.Shown.List(PackSheets.All, s => new JsonObject { ["kind"] = s.Kind, ["code"] = s.Code, ["purpose"] = s.Purpose }),
        ["mostBytes"] = FlockReader.MostBytes,
        ["mostPdfBytes"] = EarlierFile.MostBytes,
        // How a line to write a tag on begins, where nobody has typed the tag yet.
        ["tagLine"] = DraftEwe.TagLine,
    };

    /// <summary>A file somebody chose, and its <c>text</c>: null where it is none to go on with, and why is among what was found.</summary>
    /// <param name="bytes">Of a file longer than a flock file may be, one byte over that is enough.</param>
    public static JsonObject Open(ReadOnlySpan<byte> bytes, string name, string today)
    {
        var day = ScreenDay.Day(today);
        var reading = PackMaker.Read(name, bytes, _ => day);
        var isText = bytes.Length <= FlockReader.MostBytes && System.Text.Unicode.Utf8.IsValid(bytes) && (reading.Source.Text.Length > 0 || bytes.IsEmpty);
        var shown = Shown(reading, PackMaker.Plan(reading, day, forPaper: true), day);
        shown.Add("text", isText ? Encoding.UTF8.GetString(bytes) : null);
        return shown;
    }

    /// <summary>What a flock file says, and what <c>check</c> says of it.</summary>
    public static JsonObject Read(OpenFlock flock) => Shown(flock.Reading, flock.Planned, flock.Today);

    /// <summary>Makes edits of a form, all or none. For somebody who is typing: nothing is planned, so what <c>check</c> would only warn of in the plan is not found.</summary>
    /// <param name="edits">See <see cref="FormEdits"/>.</param>
    /// <returns>The flock as it is now, and as <see cref="Read"/> with <c>text</c>, the file as it is now; <c>refused</c>, why the edits were not made, is empty where they were.</returns>
    public static (OpenFlock Now, JsonObject Shown) Apply(string text, string name, string today, string edits)
    {
        var file = FlockFile.OpenAsIs(name, Encoding.UTF8.GetBytes(text), out var before);
        var edit = file is null ? new FlockEdit(null, before.Diagnostics, before.Source) : FormEdits.Apply(file, JsonNode.Parse(edits)!.AsArray());
        var now = new OpenFlock(edit.File is { } changed ? Encoding.UTF8.GetString(changed.ToBytes()) : text, name, today);
        var shown = Shown(now.Reading, null, now.Today);
        shown.Add("text", now.Text);
        shown.Add("refused", edit.File is null ? Found(edit.Diagnostics, _ => []) : new JsonArray());
        return (now, shown);
    }

    /// <summary>What was noticed, each with the way to what it is about.</summary>
    internal static JsonArray Found(IEnumerable<Diagnostic> found, Func<SourceSpan, JsonArray> pathOf) => Figures.Shown.List(found, d => new JsonObject
    {
        ["severity"] = d.Severity == Severity.Error ? "error" : "warning",
        ["code"] = d.Code,
        ["line"] = d.Span.Line,
        ["column"] = d.Span.Column,
        ["length"] = d.Span.Length,
        ["message"] = d.Message,
        ["advice"] = d.Advice,
        ["path"] = ToField(pathOf(d.Span), d),
    });

    /// <summary>What is missing has no place in the file, but a field: the message begins with its key.</summary>
    private static JsonArray ToField(JsonArray path, Diagnostic found)
    {
        if (found.Code == "FLK022" && found.Message.Split('`') is ["", var key, ..] && path.LastOrDefault()?.ToJsonString().Trim('"') != key)
        {
            path.Add((JsonNode)key);
        }

        return path;
    }

    /// <param name="planned">Null where there is no time for it.</param>
    private static JsonObject Shown(FlockReading reading, PlannedFlock? planned, LocalDate today)
    {
        var flock = planned is null ? reading.Flock : planned.Plan?.Flock;
        var values = reading.Values();
        var days = new JsonObject();
        AddDays(values, days);
        return new JsonObject
        {
            ["ok"] = flock is not null,
            ["planned"] = planned is not null,
            ["found"] = Found(planned?.Diagnostics ?? reading.Diagnostics, reading.PathOf),
            ["values"] = values,
            ["days"] = days,
            ["today"] = ScreenText.Day(today),
            ["holding"] = flock?.Holding.Name,
            ["ewes"] = flock?.Ewes.Length,
            // What tells this pack from those of other flocks and seasons.
            ["pack"] = planned?.Plan is { } plan ? PackComposer.IdOf(plan) : null,
        };
    }

    /// <summary>Every date the file says, with its weekday.</summary>
    private static void AddDays(JsonNode? value, JsonObject days)
    {
        switch (value)
        {
            case JsonObject section:
                section.ToList().ForEach(entry => AddDays(entry.Value, days));
                break;
            case JsonArray list:
                list.ToList().ForEach(item => AddDays(item, days));
                break;
            case not null when LocalDatePattern.Iso.Parse(value.GetValue<string>()) is { Success: true, Value: var day }:
                days[value.GetValue<string>()] = ScreenText.Day(day);
                break;
        }
    }
}
