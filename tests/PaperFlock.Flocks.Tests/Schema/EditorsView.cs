using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace PaperFlock.Flocks.Tests.Schema;

/// <summary>A flock file as an editor hands it to a JSON Schema: bare words become numbers, truths and nulls as the core schema of YAML 1.2.2 (10.3.2) has it.</summary>
internal static partial class EditorsView
{
    /// <returns>False when it is no single document that JSON could hold: no YAML, a key twice, another encoding.</returns>
    public static bool TryRead(byte[] bytes, out JsonNode? json)
    {
        json = null;
        try
        {
            var stream = new YamlStream();
            stream.Load(new StringReader(new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes)));
            if (stream.Documents.Count != 1)
            {
                return false;
            }

            json = Of(stream.Documents[0].RootNode, 0);
            return true;
        }
        catch (Exception e) when (e is YamlException or ArgumentException or InvalidOperationException)
        {
            return false;
        }
    }

    private static JsonNode? Of(YamlNode node, int depth) => node switch
    {
        _ when depth > 20 => throw new ArgumentException("Deeper than any editor goes."),
        YamlMappingNode map => new JsonObject(map.Children.Select(c =>
            new KeyValuePair<string, JsonNode?>(((c.Key as YamlScalarNode) ?? throw new ArgumentException("A key that is no word.")).Value!, Of(c.Value, depth + 1)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(c => Of(c, depth + 1))]),
        YamlScalarNode { Style: not ScalarStyle.Plain } quoted => JsonValue.Create(quoted.Value),
        YamlScalarNode plain => Plain(plain.Value ?? ""),
        _ => throw new ArgumentException("An alias."),
    };

    private static JsonNode? Plain(string text) => text switch
    {
        "" or "~" or "null" or "Null" or "NULL" => null,
        "true" or "True" or "TRUE" => JsonValue.Create(true),
        "false" or "False" or "FALSE" => JsonValue.Create(false),
        _ when Octal().IsMatch(text) => JsonValue.Create(Convert.ToInt64(text[2..], 8)),
        _ when Hexadecimal().IsMatch(text) => JsonValue.Create(Convert.ToInt64(text[2..], 16)),
        _ when Number().IsMatch(text) => decimal.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var exact)
            ? JsonValue.Create(exact)
            : JsonValue.Create(double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture)),
        _ => JsonValue.Create(text),
    };

    [GeneratedRegex("^0o[0-7]{1,15}$")]
    private static partial Regex Octal();

    [GeneratedRegex("^0x[0-9a-fA-F]{1,15}$")]
    private static partial Regex Hexadecimal();

    [GeneratedRegex(@"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]{1,2})?$")]
    private static partial Regex Number();
}
