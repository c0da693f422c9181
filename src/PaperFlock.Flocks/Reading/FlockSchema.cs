using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace PaperFlock.Flocks.Reading;

/// <summary>
/// The flock file as a JSON Schema (2020-12), for editors that complete and check while somebody types. Made from the tables the
/// reader reads by. Every file the reader takes is valid by it; what it finds wrong the reader refuses too. The reader sees more:
/// days no year has, names that must agree, dates that do not fit together.
/// </summary>
/// <remarks>
/// The reader takes every value as text, and an editor takes a bare <c>12</c> for a number, <c>true</c> for a truth and <c>null</c>
/// or nothing at all for null (YAML 1.2.2, 10.3). So text may be any of them here, a number may stand in quotes, and what may be
/// left out may be left blank.
/// </remarks>
public static class FlockSchema
{
    private const string DateName = "date";

    private const string FlagName = "true-or-false";

    private static readonly string[] FlagWords = ["true", "false", "yes", "no"];

    private static readonly JsonSerializerOptions Layout = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        // Read by people too, and never part of a web page.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <returns>One indented object, LF between lines and after the last.</returns>
    public static string Json()
    {
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "PaperFlock flock file, format 1",
            ["description"] = "One flock of ewes for one lambing season.",
        };
        Section(schema, FlockKeys.Top, mayBeBlank: false);
        var named = new JsonObject
        {
            [DateName] = Of("string", DatePattern()),
            [FlagName] = new JsonObject { ["anyOf"] = new JsonArray(Of("boolean"), Of("string", OneOf(FlagWords))) },
        };
        foreach (var text in FlockKeys.All.SelectMany(t => t.Keys).SelectMany(k => Texts(k.Form)).Distinct().OrderBy(NameOf, StringComparer.Ordinal))
        {
            named.Add(NameOf(text), Text(text));
        }

        schema.Add("$defs", named);
        return schema.ToJsonString(Layout) + "\n";
    }

    /// <summary>Adds what holds of a section to what is said of it already.</summary>
    private static JsonObject Section(JsonObject said, KeyTable table, bool mayBeBlank)
    {
        var required = table.Keys.Where(k => k.IsRequired).Select(k => k.Name).ToList();
        var keys = table.Keys.Select(key => KeyValuePair.Create(
            key.Name, (JsonNode?)Value(new JsonObject { ["description"] = SchemaWords.Of(key) }, key.Form, mayBeBlank: !key.IsRequired)));
        return With(
            said,
            ("type", Type("object", mayBeBlank)),
            ("properties", new JsonObject(keys)),
            ("required", required.Count == 0 ? null : Words(required)),
            ("oneOf", table.ExactlyOneOf.IsEmpty ? null : new JsonArray([.. table.ExactlyOneOf.Select(Given)])),
            ("additionalProperties", false));
    }

    /// <param name="more">What holds of it besides; null for nothing of that name.</param>
    private static JsonObject With(JsonObject said, params IEnumerable<(string Name, JsonNode? Value)> more)
    {
        foreach (var (name, value) in more.Where(m => m.Value is not null))
        {
            said.Add(name, value);
        }

        return said;
    }

    /// <summary>A key with something after its colon.</summary>
    private static JsonObject Given(string key) => new()
    {
        ["required"] = new JsonArray(key),
        ["properties"] = new JsonObject { [key] = new JsonObject { ["not"] = Of("null") } },
    };

    private static JsonObject Value(JsonObject said, Form form, bool mayBeBlank) => form switch
    {
        SectionForm section => Section(said, section.Table, mayBeBlank),
        ListForm list => List(said, list, mayBeBlank),
        TextForm text => With(said, ("$ref", $"#/$defs/{NameOf(text)}")),
        _ => With(said, ("anyOf", new JsonArray([.. Alternatives(form), .. mayBeBlank ? [Of("null")] : Array.Empty<JsonObject>()]))),
    };

    private static JsonObject List(JsonObject said, ListForm list, bool mayBeBlank) => With(
        said,
        ("type", Type("array", mayBeBlank)),
        ("items", Value([], list.Item, mayBeBlank: false)),
        ("minItems", list.Fewest > 0 ? list.Fewest : null),
        ("maxItems", list.Most));

    /// <summary>A length counts only where the reader takes nothing away before it counts: blanks at the ends, and in a note every blank after the first.</summary>
    private static JsonObject Text(TextForm text) => new()
    {
        ["type"] = new JsonArray("string", "number", "boolean", "null"),
        ["pattern"] = @"\S",
        ["anyOf"] = new JsonArray(
            new JsonObject { ["maxLength"] = text.Longest },
            new JsonObject { ["pattern"] = text.MayRunOn ? @"^\s|\s$|\s\s" : @"^[ \t]|[ \t]$" }),
    };

    private static string NameOf(TextForm text) =>
        text.MayRunOn ? "note" : string.Create(CultureInfo.InvariantCulture, $"text-of-{text.Longest}");

    private static IEnumerable<TextForm> Texts(Form form) => form switch
    {
        TextForm text => [text],
        ListForm list => Texts(list.Item),
        EitherForm either => Texts(either.One).Concat(Texts(either.Other)),
        _ => [],
    };

    private static IEnumerable<JsonObject> Alternatives(Form form) => form switch
    {
        EitherForm either => Alternatives(either.One).Concat(Alternatives(either.Other)),
        ListForm list => [List([], list, mayBeBlank: false)],
        SectionForm section => [Section([], section.Table, mayBeBlank: false)],
        DateForm => [Reference(DateName)],
        FlagForm => [Reference(FlagName)],
        VersionForm => [new() { ["const"] = 1 }, Of("string", "^ *1 *$")],
        NoneForm => [new() { ["const"] = false }, Of("string", OneOf(["false", "no"]))],
        // Which names there are is for the tz database of the day to say.
        ZoneForm => [Of("string", "^ *[A-Za-z][A-Za-z0-9_+/-]* *$")],
        ChoiceForm choice => [new() { ["enum"] = Words(choice.Words) }, Of("string", OneOf(choice.Words))],
        NumberForm { IsWhole: var isWhole } number =>
        [
            new() { ["type"] = isWhole ? "integer" : "number", ["minimum"] = number.Least, ["maximum"] = number.Most },
            Of("string", isWhole ? @"^ *-?[0-9]+(?:\.0+)? *$" : @"^ *-?[0-9]+(?:\.[0-9]+)? *$"),
        ],
        QuantityForm quantity =>
            [Of("string", $@"^ *-?[0-9]+(?:\.[0-9]+)? *(?:{string.Join('|', quantity.Units.SelectMany(u => new[] { u.Name, u.OtherName }).OfType<string>().Select(AnyCase))}) *$")],
        TimeForm time => [Of("string", $"^ *(?:{string.Join('|', Hours(time.Least, time.Most))}) *$")],
        _ => throw new ArgumentOutOfRangeException(nameof(form), form, "A form the schema does not know."),
    };

    private static JsonNode Type(string type, bool mayBeBlank) => mayBeBlank ? new JsonArray(type, "null") : type;

    private static JsonObject Of(string type, string? pattern = null) =>
        pattern is null ? new() { ["type"] = type } : new() { ["type"] = type, ["pattern"] = pattern };

    private static JsonObject Reference(string name) => new() { ["$ref"] = $"#/$defs/{name}" };

    private static JsonArray Words(IEnumerable<string> words) => new([.. words.Select(word => (JsonNode)word)]);

    private static string OneOf(IEnumerable<string> words) => $"^ *(?:{string.Join('|', words.Select(AnyCase))}) *$";

    /// <summary>Every day a leap year may have.</summary>
    private static string DatePattern()
    {
        // By the first three figures, and the last ones that go with them.
        var years = string.Join('|', Enumerable.Range(DateValues.FirstYear, DateValues.LastYear - DateValues.FirstYear + 1)
            .GroupBy(year => year / 10)
            .Select(decade => string.Create(CultureInfo.InvariantCulture, $"{decade.Key}[{decade.First() % 10}-{decade.Last() % 10}]")));
        return $"^ *(?:{years})-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12][0-9]|3[01])|(?:0[469]|11)-(?:0[1-9]|[12][0-9]|30)|02-(?:0[1-9]|[12][0-9])) *$";
    }

    /// <summary>Hour by hour, both limits included.</summary>
    private static IEnumerable<string> Hours(LocalTime least, LocalTime most)
    {
        for (var hour = least.Hour; hour <= most.Hour; hour++)
        {
            var (first, last) = (hour == least.Hour ? least.Minute : 0, hour == most.Hour ? most.Minute : 59);
            var minutes = first == 0 && last == 59
                ? "[0-5][0-9]"
                : $"(?:{string.Join('|', Enumerable.Range(first, last - first + 1).Select(m => m.ToString("00", CultureInfo.InvariantCulture)))})";
            yield return $"{hour.ToString("00", CultureInfo.InvariantCulture)}:{minutes}";
        }
    }

    /// <summary>A pattern that takes a word in capitals or not: patterns of JSON Schema have no switch for it.</summary>
    private static string AnyCase(string word) => string.Concat(word.Select(c =>
        char.IsAsciiLetter(c) ? $"[{char.ToLowerInvariant(c)}{char.ToUpperInvariant(c)}]" : c.ToString()));
}
