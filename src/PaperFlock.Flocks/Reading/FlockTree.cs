using System.Text.Json.Nodes;

namespace PaperFlock.Flocks.Reading;

/// <summary>A flock file as it is written, right or wrong: for a form that shows each value in its field, and each mistake beside it.</summary>
public static class FlockTree
{
    /// <summary>The file as it is written: sections as objects, lists as arrays, values as texts, and null where nothing is written.</summary>
    /// <returns>Null where the file is no YAML.</returns>
    public static JsonNode? Values(this FlockReading reading) => Values(reading.Root);

    /// <summary>The way to what a place in the file is about: keys as texts, items of lists as numbers from 0. Empty for the file as a whole, or where it is no YAML.</summary>
    public static JsonArray PathOf(this FlockReading reading, SourceSpan span)
    {
        var path = new JsonArray();
        if (!span.IsWholeFile)
        {
            var at = reading.Source.OffsetOf(span.Line) + span.Column - 1;
            for (var node = reading.Root; node is not null;)
            {
                node = Below(node, at, reading.Source, path);
            }
        }

        return path;
    }

    private static JsonNode? Values(Node? node) => node switch
    {
        Mapping section => new JsonObject(section.Entries.Select(e => KeyValuePair.Create(e.Key.Text, Values(e.Value)))),
        Sequence list => new JsonArray([.. list.Items.Select(Values)]),
        Scalar { IsBlank: false } scalar => scalar.Text.Trim(' '),
        _ => null,
    };

    /// <summary>The last that begins no later: what follows a value on its line, or is missing after it, is about that value.</summary>
    private static Node? Below(Node node, int at, SourceText source, JsonArray path)
    {
        switch (node)
        {
            case Mapping section when section.Entries.LastOrDefault(e => e.Key.Extent.Start <= at) is { } entry:
                path.Add((JsonNode)entry.Key.Text);
                return entry.Value;
            case Sequence list when list.Items.ToList().FindLastIndex(i => StartOf(i, list, source) <= at) is >= 0 and var index:
                path.Add((JsonNode)index);
                return list.Items[index];
            default:
                return null;
        }
    }

    /// <summary>An item under a dash begins with the dash.</summary>
    private static int StartOf(Node item, Sequence list, SourceText source) => list.IsFlow ? item.Extent.Start : source.OffsetOf(item.Span.Line);
}
