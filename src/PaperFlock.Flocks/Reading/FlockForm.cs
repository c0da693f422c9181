using System.Text.Json.Nodes;

namespace PaperFlock.Flocks.Reading;

/// <summary>
/// The keys of the flock file as the fields of a form, made from the tables the reader reads by, with the words of the JSON Schema.
/// </summary>
/// <remarks>
/// One object: a section for each table of keys, under its path (<c>feeds.forage</c>, <c>ewes[]</c>; empty for the top of the file), with
/// <c>keys</c> in their order and <c>exactlyOneOf</c>. A key has <c>name</c>, <c>form</c>, <c>required</c>, <c>help</c>, and <c>default</c> and <c>example</c> or null. A form has its
/// <c>kind</c>, and with it: <c>text</c> longest, runsOn; <c>number</c> whole, least, most; <c>quantity</c> units; <c>choice</c> words; <c>list</c> item (a form), fewest, most;
/// <c>section</c> path; <c>either</c> one, other (forms); <c>date</c>, <c>time</c>, <c>flag</c>, <c>zone</c>, <c>none</c> and <c>version</c> nothing.
/// </remarks>
public static class FlockForm
{
    public static JsonObject Json() => new(FlockKeys.All.Select(table => KeyValuePair.Create(table.Path, (JsonNode?)Section(table))));

    private static JsonObject Section(KeyTable table) => new()
    {
        ["keys"] = new JsonArray([.. table.Keys.Select(Key)]),
        ["exactlyOneOf"] = Words(table.ExactlyOneOf),
    };

    private static JsonObject Key(FlockKey key) => new()
    {
        ["name"] = key.Name,
        ["form"] = Of(key.Form),
        ["required"] = key.IsRequired,
        ["help"] = SchemaWords.Of(key),
        ["default"] = key.Default,
        ["example"] = key.Example,
    };

    private static JsonObject Of(Form form) => form switch
    {
        TextForm text => new() { ["kind"] = "text", ["longest"] = text.Longest, ["runsOn"] = text.MayRunOn },
        NumberForm number => new() { ["kind"] = "number", ["whole"] = number.IsWhole, ["least"] = NumberValues.Format(number.Least), ["most"] = NumberValues.Format(number.Most) },
        QuantityForm quantity => new() { ["kind"] = "quantity", ["units"] = Words(quantity.Units.Select(u => u.Name)) },
        ChoiceForm choice => new() { ["kind"] = "choice", ["words"] = Words(choice.Words) },
        ListForm list => new() { ["kind"] = "list", ["item"] = Of(list.Item), ["fewest"] = list.Fewest, ["most"] = list.Most },
        SectionForm section => new() { ["kind"] = "section", ["path"] = section.Path },
        EitherForm either => new() { ["kind"] = "either", ["one"] = Of(either.One), ["other"] = Of(either.Other) },
        DateForm => Bare("date"),
        TimeForm => Bare("time"),
        FlagForm => Bare("flag"),
        ZoneForm => Bare("zone"),
        NoneForm => Bare("none"),
        VersionForm => Bare("version"),
        _ => throw new ArgumentOutOfRangeException(nameof(form), form, "A form no field knows."),
    };

    private static JsonObject Bare(string kind) => new() { ["kind"] = kind };

    private static JsonArray Words(IEnumerable<string> words) => new([.. words.Select(word => (JsonNode)word)]);
}
