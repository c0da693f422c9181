using System.Buffers;
using System.Text;

namespace PaperFlock.Flocks.Tests.Editing;

/// <summary>Writes a flock down as somebody else might have: every style YAML allows and the reader takes, mixed. Comments are numbered, so that one gone or moved is noticed.</summary>
internal sealed class RandomLayout(int seed)
{
    private static readonly SearchValues<char> Marks = SearchValues.Create(":#");

    private static readonly SearchValues<char> MarksInFlow = SearchValues.Create(",:#'\"{}[]");

    private readonly Random _random = new(seed);
    private readonly string _newLine = new[] { "\n", "\n", "\r\n", "\r" }[new Random(seed).Next(4)];
    private int _comments;
    private bool _isAfterBlock;

    /// <param name="ewes">Each with its keys and values, in order; a list is one of texts.</param>
    public byte[] Write(IReadOnlyList<(string Key, object Value)[]> ewes)
    {
        var text = new StringBuilder();
        if (Often(8))
        {
            text.Append("%YAML 1.2").Append('\n').Append("---").Append(Comment()).Append('\n');
        }

        var sections = new List<string>
        {
            $"paperflock: 1{Comment()}\n",
            $"holding:{Comment()}\n  name: Hollin Bank\n{Lines(2)}  location: {{latitude: 54.46, longitude: -2.74}}\n  time-zone: Europe/London{Comment()}\n",
            $"season: {{tup-in: 2026-08-10}}{Comment()}\n",
            Ewes(ewes),
        };
        _random.Shuffle(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(sections));
        foreach (var section in sections)
        {
            text.Append(Lines(-3)).Append(section);
        }

        text.Append(Lines(-3));
        if (Often(8))
        {
            text.Append("...\n");
        }

        var whole = text.ToString().Replace("\n", _newLine, StringComparison.Ordinal);
        whole = Often(3) ? whole.TrimEnd('\n', '\r') : whole;
        return [.. Often(4) ? Encoding.UTF8.Preamble : [], .. Encoding.UTF8.GetBytes(whole)];
    }

    private bool Often(int oneIn) => _random.Next(oneIn) == 0;

    private T Any<T>(params T[] of) => of[_random.Next(of.Length)];

    private string Spaces(int least, int most) => new(' ', _random.Next(least, most + 1));

    private string Comment() => Often(4) ? $"{Any(" ", "   ", "\t", " \t ")}# c{(_comments++).ToString(CultureInfo.InvariantCulture)}: it's \"{Any("a", "{b", "[c", "- d")}" : Any("", "", "", " ", "\t");

    /// <summary>Empty lines and comments between things. After a block of text, a comment or blanks further in would be text.</summary>
    private string Lines(int indent)
    {
        indent = _isAfterBlock ? -3 : indent;
        _isAfterBlock = false;
        return string.Concat(Enumerable.Range(0, Often(3) ? _random.Next(1, 3) : 0).Select(_ =>
        Any("", "\n", Spaces(0, indent < 0 ? 0 : 4) + "\n", $"{new string(' ', Any(0, Math.Max(0, indent), indent + 3))}# c{(_comments++).ToString(CultureInfo.InvariantCulture)} scan: 9\n")));
    }


    private string Ewes(IReadOnlyList<(string Key, object Value)[]> ewes)
    {
        if (Often(6))
        {
            return Any(
                $"ewes: [{string.Join(Any(", ", ","), ewes.Select(e => Braces(e, json: false)))}]{Comment()}\n",
                $"ewes: [{Comment()}\n    {string.Join($",{Comment()}\n    ", ewes.Select(e => Braces(e, json: false)))}{Comment()}\n  ]{Comment()}\n",
                $"\"ewes\": [{string.Join(", ", ewes.Select(e => Braces(e, json: true)))}]\n");
        }

        var dash = Spaces(0, 4);
        var text = new StringBuilder($"{Key("ewes")}:{Comment()}\n");
        foreach (var ewe in ewes)
        {
            text.Append(Lines(dash.Length));
            var gap = Spaces(1, 4);
            if (Often(5))
            {
                text.Append(dash).Append('-').Append(gap).Append(Often(3) ? BracesOverLines(ewe, dash.Length + 2) : Braces(ewe, json: Often(4))).Append(Comment()).Append('\n');
                continue;
            }

            var indent = dash.Length + 1 + gap.Length;
            text.Append(dash).Append('-').Append(Often(5) ? $"{Comment()}\n{Lines(indent)}{new string(' ', indent)}" : gap);
            text.Append(string.Concat(ewe.Select((e, i) => $"{(i == 0 ? "" : Lines(indent) + new string(' ', indent))}{Entry(e.Key, e.Value, indent)}")));
        }

        return text.ToString();
    }

    private string Block(string key)
    {
        _isAfterBlock = true;
        return Key(key);
    }

    private string Key(string key) => Any(key, key, key, key, $"'{key}'", $"\"{key}\"");

    private string Entry(string key, object value, int indent)
    {
        var inner = new string(' ', indent + _random.Next(1, 5));
        if (value is string[] list)
        {
            var dashes = new string(' ', indent + Any(0, 2, 4));
            return Any(0, 0, 1, 2) switch
            {
                0 => $"{Key(key)}: [{Spaces(0, 1)}{string.Join(Any(", ", " ,", ","), list.Select(v => Scalar(v, inFlow: true)))}{Any("", " ", list.Length > 0 ? "," : "")}]{Comment()}\n",
                1 when list.Length > 0 => $"{Key(key)}:{Comment()}\n{string.Concat(list.Select(v => $"{Lines(indent + 4)}{dashes}-{Spaces(1, 3)}{Scalar(v, inFlow: false)}{Comment()}\n"))}",
                _ => $"{Key(key)}: [{Comment()}\n{string.Join("", list.Select((v, i) => $"{inner}{Scalar(v, inFlow: true)}{(i + 1 < list.Length ? "," : "")}{Comment()}\n"))}{inner}]{Comment()}\n",
            };
        }

        var text = (string)value;
        if (text.Length == 0)
        {
            return $"{Key(key)}:{Comment()}\n";
        }

        var isProse = key == "note";
        return _random.Next(isProse ? 8 : 12) switch
        {
            0 => $"? {Key(key)}{Comment()}\n{new string(' ', indent)}: {Scalar(text, inFlow: false)}{Comment()}\n",
            1 => $"{Key(key)}:{Comment()}\n{inner}{Scalar(text, inFlow: false)}{Comment()}\n",
            2 => $"{Block(key)}: {Any("|-", ">-")}{Comment()}\n{inner}{text}\n{Any("", "\n", "\n\n")}",
            3 when isProse && !text.AsSpan().ContainsAny(Marks) => $"{Key(key)}: {text.Replace(" ", $"\n{inner}", StringComparison.Ordinal)}{Comment()}\n",
            4 when isProse => $"{Key(key)}: \"{text.Replace("\"", "\\\"", StringComparison.Ordinal).Replace(" ", $"\n{inner}", StringComparison.Ordinal)}\"{Comment()}\n",
            5 when isProse => $"{Block(key)}: {Any("|", ">", "|+")}{Comment()}\n{inner}{text}\n{Any("", "\n", "\n\n")}",
            _ => $"{Key(key)}{Any("", "", " ")}:{Any(" ", " ", "   ", "\t")}{Scalar(text, inFlow: false)}{Comment()}\n",
        };
    }

    private string Scalar(string text, bool inFlow) => Any(0, 0, 0, 1, 2) switch
    {
        0 when !text.AsSpan().ContainsAny(inFlow ? MarksInFlow : Marks) => text,
        1 => $"\"{text.Replace("\"", "\\\"", StringComparison.Ordinal)}\"",
        _ => $"'{text.Replace("'", "''", StringComparison.Ordinal)}'",
    };

    private string Braces((string Key, object Value)[] ewe, bool json)
    {
        var entries = ewe.Select(e => e.Value switch
        {
            string[] list => $"{Name(e.Key)}: [{string.Join(", ", list.Select(Value))}]",
            "" => json || Often(2) ? $"{Name(e.Key)}: {(json ? "" : Spaces(0, 1))}" : Name(e.Key),
            string text => $"{Name(e.Key)}{(json ? ":" : ": ")}{Value(text)}",
            _ => throw new ArgumentException("Texts and lists of texts only.", nameof(ewe)),
        });
        return $"{{{Spaces(0, 1)}{string.Join(Any(", ", " , ", ","), entries)}{Spaces(0, 1)}}}";

        string Name(string key) => json ? $"\"{key}\"" : Key(key);
        string Value(string text) => json ? $"\"{text.Replace("\"", "\\\"", StringComparison.Ordinal)}\"" : Scalar(text, inFlow: true);
    }

    private string BracesOverLines((string Key, object Value)[] ewe, int indent)
    {
        var inner = new string(' ', indent + 2);
        var entries = ewe.Select((e, i) =>
        {
            var value = e.Value is string[] list ? $"[{string.Join(", ", list.Select(v => Scalar(v, inFlow: true)))}]" : (string)e.Value is { Length: > 0 } text ? Scalar(text, inFlow: true) : "";
            return $"{inner}{Key(e.Key)}: {value}{(i + 1 < ewe.Length ? "," : Any("", ","))}{Comment()}\n";
        });
        return $"{{{Comment()}\n{string.Concat(entries)}{new string(' ', indent)}}}";
    }
}
