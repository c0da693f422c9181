using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using PaperFlock.Diagnostics;

namespace PaperFlock.Languages.Po;

/// <summary>
/// Reads a catalogue in gettext's PO format (GNU gettext manual, "The Format of PO Files"): comments, <c>#, fuzzy</c>, <c>msgctxt</c>,
/// <c>msgid</c>, <c>msgid_plural</c>, <c>msgstr</c> and <c>msgstr[N]</c>, strings over several lines. Entries taken out of use (<c>#~</c>) are passed over.
/// </summary>
internal sealed class PoReader
{
    private readonly SourceText _source;
    private readonly DiagnosticBag _found;
    private readonly ImmutableArray<PoEntry>.Builder _entries = ImmutableArray.CreateBuilder<PoEntry>();
    private readonly SortedDictionary<int, PoText> _said = [];
    private PoText? _context;
    private PoText? _id;
    private PoText? _plural;
    private bool _fuzzy;
    private Slot? _open;
    private int _form;

    private PoReader(SourceText source, DiagnosticBag found)
    {
        _source = source;
        _found = found;
    }

    private enum Slot
    {
        Context,
        Id,
        Plural,
        Said,
    }

    /// <returns>Every entry that can be read, the header included.</returns>
    public static ImmutableArray<PoEntry> Read(SourceText source, DiagnosticBag found)
    {
        var reader = new PoReader(source, found);
        for (var line = 1; line <= source.LineCount; line++)
        {
            reader.Line(line, source.Line(line));
        }

        reader.Finish();
        return reader._entries.ToImmutable();
    }

    private void Line(int line, string text)
    {
        var start = text.Length - text.TrimStart().Length;
        var words = text.AsSpan(start).TrimEnd();
        if (line == 1 && words is ['\uFEFF', ..])
        {
            words = words[1..];
            start++;
        }

        if (words.IsEmpty)
        {
            return;
        }

        if (words[0] == '#')
        {
            Comment(words);
        }
        else if (words[0] == '"')
        {
            Add(line, start, words);
        }
        else
        {
            Keyword(line, start, words);
        }
    }

    private void Comment(ReadOnlySpan<char> words)
    {
        if (_said.Count > 0)
        {
            Finish();
        }

        _fuzzy |= words.StartsWith("#,") && words.Contains("fuzzy", StringComparison.Ordinal);
    }

    private void Keyword(int line, int start, ReadOnlySpan<char> words)
    {
        var end = words.IndexOfAny(' ', '\t', '"');
        var keyword = end < 0 ? words : words[..end];
        var rest = words[keyword.Length..];
        var space = rest.Length - rest.TrimStart().Length;
        var at = start + keyword.Length + space;
        var span = new SourceSpan(line, start + 1, Math.Max(1, keyword.Length));
        switch (keyword)
        {
            case "msgctxt":
                Begin(Slot.Context);
                break;
            case "msgid":
                Begin(Slot.Id);
                break;
            case "msgid_plural":
                _open = Slot.Plural;
                break;
            case "msgstr":
                (_open, _form) = (Slot.Said, 0);
                break;
            case ['m', 's', 'g', 's', 't', 'r', '[', .. var number, ']'] when int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var form) && form < 10:
                (_open, _form) = (Slot.Said, form);
                break;
            default:
                _open = null;
                _found.Add(PoMessages.UnknownKeyword(span, keyword.ToString()));
                return;
        }

        if (rest.TrimStart() is not ['"', ..] text)
        {
            _found.Add(PoMessages.NoString(span, keyword.ToString()));
            return;
        }

        Set(new PoText("", new SourceSpan(line, at + 1, text.Length)));
        Add(line, at, text);
    }

    /// <summary>An entry begins with its context, or with its id where it has none.</summary>
    private void Begin(Slot slot)
    {
        if (_id is not null)
        {
            Finish();
        }

        _open = slot;
    }

    /// <summary>A string, or one more of the same text.</summary>
    private void Add(int line, int start, ReadOnlySpan<char> quoted)
    {
        var span = new SourceSpan(line, start + 1, Math.Max(1, quoted.Length));
        if (_open is null || Current() is not { } before)
        {
            _found.Add(PoMessages.StrayString(span));
            return;
        }

        if (quoted.Length < 2 || quoted[^1] != '"' || Unescaped(quoted[1..^1]) is not { } words)
        {
            _found.Add(PoMessages.BadString(span));
            return;
        }

        Set(before with { Words = before.Words + words });
    }

    /// <returns>Null for a quote in the middle, a lone backslash, or an escape that there is none of.</returns>
    private static string? Unescaped(ReadOnlySpan<char> words)
    {
        var text = new StringBuilder(words.Length);
        for (var i = 0; i < words.Length; i++)
        {
            if (words[i] == '"')
            {
                return null;
            }

            if (words[i] != '\\')
            {
                text.Append(words[i]);
                continue;
            }

            char? plain = ++i < words.Length ? words[i] switch { 'n' => '\n', 't' => '\t', 'r' => '\r', '"' => '"', '\\' => '\\', _ => null } : null;
            if (plain is null)
            {
                return null;
            }

            text.Append(plain.Value);
        }

        return text.ToString();
    }

    private PoText? Current() => _open switch
    {
        Slot.Context => _context,
        Slot.Id => _id,
        Slot.Plural => _plural,
        _ => _said.TryGetValue(_form, out var said) ? said : null,
    };

    private void Set(PoText text)
    {
        switch (_open)
        {
            case Slot.Context:
                _context = text;
                break;
            case Slot.Id:
                _id = text;
                break;
            case Slot.Plural:
                _plural = text;
                break;
            default:
                _said[_form] = text;
                break;
        }
    }

    private void Finish()
    {
        if (_id is { } id)
        {
            if (_said.Count == 0 || _said.Keys.Last() != _said.Count - 1)
            {
                _found.Add(PoMessages.NothingSaid(id.Span));
            }
            else
            {
                _entries.Add(new PoEntry(_context?.Words, id, _plural, [.. _said.Values], _fuzzy));
            }
        }

        _said.Clear();
        (_context, _id, _plural, _fuzzy, _open) = (null, null, null, false, null);
    }
}
