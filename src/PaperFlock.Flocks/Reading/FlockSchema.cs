using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using PaperFlock.Flocks.Reading.Values;

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
    public const string FileName = "flock.schema.json";

    private const string DateName = "date";

    private const string FlagName = "true-or-false";

    private static readonly string[] FlagWords = ["true", "false", "yes", "no"];

    private static readonly string[] TextTypes = ["string", "number", "boolean", "null"];

    /// <returns>One indented object, LF between lines and after the last.</returns>
    public static string Json()
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions
        {
            Indented = true,
            NewLine = "\n",
            // Read by people too, and never part of a web page.
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        }))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", "PaperFlock flock file, format 1");
            json.WriteString("description", "One flock of ewes for one lambing season.");
            Section(json, FlockKeys.Top, mayBeBlank: false);
            json.WriteStartObject("$defs");
            json.WriteStartObject(DateName);
            json.WriteString("type", "string");
            json.WriteString("pattern", DatePattern());
            json.WriteEndObject();
            json.WriteStartObject(FlagName);
            json.WriteStartArray("anyOf");
            Alternative(json, "boolean");
            Alternative(json, "string", $"^ *(?:{string.Join('|', FlagWords.Select(AnyCase))}) *$");
            json.WriteEndArray();
            json.WriteEndObject();
            foreach (var text in FlockKeys.All.SelectMany(t => t.Keys).SelectMany(k => Texts(k.Form)).Distinct().OrderBy(NameOf, StringComparer.Ordinal))
            {
                json.WriteStartObject(NameOf(text));
                Text(json, text);
                json.WriteEndObject();
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    /// <summary>Into an object already begun.</summary>
    private static void Section(Utf8JsonWriter json, KeyTable table, bool mayBeBlank)
    {
        Type(json, "object", mayBeBlank);
        json.WriteStartObject("properties");
        foreach (var key in table.Keys)
        {
            json.WriteStartObject(key.Name);
            json.WriteString("description", SchemaWords.Of(key));
            Write(json, key.Form, mayBeBlank: !key.IsRequired);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        if (table.Keys.Any(k => k.IsRequired))
        {
            json.WriteStartArray("required");
            foreach (var key in table.Keys.Where(k => k.IsRequired))
            {
                json.WriteStringValue(key.Name);
            }

            json.WriteEndArray();
        }

        if (table.ExactlyOneOf.Length > 0)
        {
            json.WriteStartArray("oneOf");
            foreach (var key in table.ExactlyOneOf)
            {
                Given(json, key);
            }

            json.WriteEndArray();
        }

        json.WriteBoolean("additionalProperties", false);
    }

    /// <summary>A key with something after its colon.</summary>
    private static void Given(Utf8JsonWriter json, string key)
    {
        json.WriteStartObject();
        json.WriteStartArray("required");
        json.WriteStringValue(key);
        json.WriteEndArray();
        json.WriteStartObject("properties");
        json.WriteStartObject(key);
        json.WriteStartObject("not");
        json.WriteString("type", "null");
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Form form, bool mayBeBlank)
    {
        switch (form)
        {
            case SectionForm section:
                Section(json, section.Table, mayBeBlank);
                break;
            case ListForm list:
                List(json, list, mayBeBlank);
                break;
            case TextForm text:
                json.WriteString("$ref", $"#/$defs/{NameOf(text)}");
                break;
            default:
                json.WriteStartArray("anyOf");
                Alternatives(json, form);
                if (mayBeBlank)
                {
                    Alternative(json, "null");
                }

                json.WriteEndArray();
                break;
        }
    }

    private static void List(Utf8JsonWriter json, ListForm list, bool mayBeBlank)
    {
        Type(json, "array", mayBeBlank);
        json.WriteStartObject("items");
        Write(json, list.Item, mayBeBlank: false);
        json.WriteEndObject();
        if (list.Fewest > 0)
        {
            json.WriteNumber("minItems", list.Fewest);
        }

        json.WriteNumber("maxItems", list.Most);
    }

    /// <summary>A length counts only where the reader takes nothing away before it counts: blanks at the ends, and in a note every blank after the first.</summary>
    private static void Text(Utf8JsonWriter json, TextForm text)
    {
        json.WriteStartArray("type");
        foreach (var type in TextTypes)
        {
            json.WriteStringValue(type);
        }

        json.WriteEndArray();
        json.WriteString("pattern", @"\S");
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        json.WriteNumber("maxLength", text.Longest);
        json.WriteEndObject();
        json.WriteStartObject();
        json.WriteString("pattern", text.MayRunOn ? @"^\s|\s$|\s\s" : @"^[ \t]|[ \t]$");
        json.WriteEndObject();
        json.WriteEndArray();
    }

    private static string NameOf(TextForm text) =>
        text.MayRunOn ? "note" : string.Create(CultureInfo.InvariantCulture, $"text-of-{text.Longest}");

    private static IEnumerable<TextForm> Texts(Form form) => form switch
    {
        TextForm text => [text],
        ListForm list => Texts(list.Item),
        EitherForm either => Texts(either.One).Concat(Texts(either.Other)),
        _ => [],
    };

    private static void Alternatives(Utf8JsonWriter json, Form form)
    {
        switch (form)
        {
            case EitherForm either:
                Alternatives(json, either.One);
                Alternatives(json, either.Other);
                break;
            case ListForm list:
                json.WriteStartObject();
                List(json, list, mayBeBlank: false);
                json.WriteEndObject();
                break;
            case SectionForm section:
                json.WriteStartObject();
                Section(json, section.Table, mayBeBlank: false);
                json.WriteEndObject();
                break;
            case DateForm:
                Reference(json, DateName);
                break;
            case FlagForm:
                Reference(json, FlagName);
                break;
            case VersionForm:
                Constant(json, j => j.WriteNumberValue(1));
                Alternative(json, "string", "^ *1 *$");
                break;
            case NoneForm:
                Constant(json, j => j.WriteBooleanValue(false));
                Alternative(json, "string", $"^ *(?:{AnyCase("false")}|{AnyCase("no")}) *$");
                break;
            case ZoneForm:
                // Which names there are is for the tz database of the day to say.
                Alternative(json, "string", "^ *[A-Za-z][A-Za-z0-9_+/-]* *$");
                break;
            case ChoiceForm choice:
                json.WriteStartObject();
                json.WriteStartArray("enum");
                foreach (var word in choice.Words)
                {
                    json.WriteStringValue(word);
                }

                json.WriteEndArray();
                json.WriteEndObject();
                Alternative(json, "string", $"^ *(?:{string.Join('|', choice.Words.Select(AnyCase))}) *$");
                break;
            case NumberForm number:
                json.WriteStartObject();
                json.WriteString("type", number.IsWhole ? "integer" : "number");
                json.WriteNumber("minimum", number.Least);
                json.WriteNumber("maximum", number.Most);
                json.WriteEndObject();
                Alternative(json, "string", number.IsWhole ? @"^ *-?[0-9]+(?:\.0+)? *$" : @"^ *-?[0-9]+(?:\.[0-9]+)? *$");
                break;
            case QuantityForm quantity:
                var units = quantity.Units.SelectMany(u => new[] { u.Name, u.OtherName }).OfType<string>().Select(AnyCase);
                Alternative(json, "string", $@"^ *-?[0-9]+(?:\.[0-9]+)? *(?:{string.Join('|', units)}) *$");
                break;
            case TimeForm time:
                Alternative(json, "string", $"^ *(?:{string.Join('|', Hours(time.Least, time.Most))}) *$");
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(form), form, "A form the schema does not know.");
        }
    }

    private static void Type(Utf8JsonWriter json, string type, bool mayBeBlank)
    {
        if (!mayBeBlank)
        {
            json.WriteString("type", type);
            return;
        }

        json.WriteStartArray("type");
        json.WriteStringValue(type);
        json.WriteStringValue("null");
        json.WriteEndArray();
    }

    private static void Alternative(Utf8JsonWriter json, string type, string? pattern = null)
    {
        json.WriteStartObject();
        json.WriteString("type", type);
        if (pattern is not null)
        {
            json.WriteString("pattern", pattern);
        }

        json.WriteEndObject();
    }

    private static void Constant(Utf8JsonWriter json, Action<Utf8JsonWriter> value)
    {
        json.WriteStartObject();
        json.WritePropertyName("const");
        value(json);
        json.WriteEndObject();
    }

    private static void Reference(Utf8JsonWriter json, string name)
    {
        json.WriteStartObject();
        json.WriteString("$ref", $"#/$defs/{name}");
        json.WriteEndObject();
    }

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
