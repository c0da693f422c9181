using System.Text.Json.Nodes;

namespace PaperFlock.Flocks.Reading;

/// <summary>A flock file as it is written, right or wrong: for a form that shows each value in its field, and each mistake beside it.</summary>
internal static class FlockTree
{
    /// <summary>Sections as objects, lists as arrays, values as texts, and null where nothing is written.</summary>
    public static JsonNode? Values(Node node) => node switch
    {
        Mapping section => new JsonObject(section.Entries.Select(e => KeyValuePair.Create(e.Key.Text, Values(e.Value)))),
        Sequence list => new JsonArray([.. list.Items.Select(Values)]),
        Scalar { IsBlank: false } scalar => scalar.Text.Trim(' '),
        _ => null,
    };

    /// <summary>The way to what a place in the text is about: keys as texts, items of lists as numbers from 0. Empty for the file as a whole.</summary>
    public static JsonArray PathOf(Node root, SourceText source, SourceSpan span)
    {
        var path = new JsonArray();
        if (span.IsWholeFile)
        {
            return path;
        }

        var at = source.OffsetOf(span.Line) + span.Column - 1;
        for (var node = root; node is not null;)
        {
            node = Below(node, at, source, path);
        }

        return path;
    }

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
