using System.Collections.Immutable;
using PaperFlock.Diagnostics;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace PaperFlock.Flocks.Reading.Yaml;

/// <summary>
/// Builds the tree from parser events, so that duplicate keys, aliases and depth are reported by us, with places, and
/// before they can cost anything: recursion goes no deeper than <see cref="DeepestNesting"/>, and nothing is ever copied.
/// </summary>
internal sealed class TreeBuilder
{
    /// <summary>The format itself goes four deep: a mark, in the marks, of a ewe, in the ewes.</summary>
    public const int DeepestNesting = 8;

    private readonly SourceText _source;
    private readonly DiagnosticBag _bag;
    private readonly Parser _events;
    private int _depth;
    private bool _isWhole = true;

    private TreeBuilder(SourceText source, DiagnosticBag bag)
    {
        (_source, _bag) = (source, bag);
        _events = new Parser(new Scanner(new StringReader(source.Text), skipComments: true));
    }

    /// <returns>The top of the one document; null when it is not whole, and then the one reason has been reported.</returns>
    public static Node? Build(SourceText source, DiagnosticBag bag)
    {
        var builder = new TreeBuilder(source, bag);
        try
        {
            if (builder.Document() is { } root && builder._isWhole)
            {
                return root;
            }
        }
        catch (YamlException fault)
        {
            bag.Add(SyntaxFault.Explain(source, (int)fault.Start.Index, (int)fault.End.Index, fault.Message));
        }
        catch (InvalidOperationException)
        {
            // The parser's own way of meeting an unclosed bracket. The last event is as far as it got.
            var reached = (int)(builder._events.Current?.End.Index ?? 0);
            bag.Add(SyntaxFault.Explain(source, reached, source.Text.Length, ""));
        }

        return null;
    }

    private Node? Document()
    {
        Advance<StreamStart>();
        _events.MoveNext();
        if (_events.Current is StreamEnd)
        {
            _bag.Add(Wording.EmptyFile());
            return null;
        }

        _events.MoveNext();
        var root = Value();
        if (!_isWhole)
        {
            return null;
        }

        Advance<DocumentEnd>();
        _events.MoveNext();
        if (_events.Current is DocumentStart second)
        {
            _bag.Add(Wording.SecondDocument(SpanOf(second)));
            return null;
        }

        return root;
    }

    private void Advance<T>()
        where T : ParsingEvent
    {
        _events.MoveNext();
        if (_events.Current is not T)
        {
            throw new InvalidOperationException("The events are out of their order.");
        }
    }

    /// <summary>Reads the value whose first event is current, and leaves its last event current.</summary>
    private Node Value()
    {
        var current = _events.Current!;
        var span = SpanOf(current);
        if (current is AnchorAlias alias)
        {
            _bag.Add(Wording.AliasOrAnchor(span, $"*{alias.Value}"));
            return new Unreadable(span);
        }

        if (current is not NodeEvent node)
        {
            throw new InvalidOperationException("A value was expected.");
        }

        RefuseProperties(node, span);
        return node switch
        {
            YamlDotNet.Core.Events.Scalar scalar => new Scalar(scalar.Value, scalar.Style == ScalarStyle.Plain, span),
            SequenceStart => Nested(span, Items),
            _ => Nested(span, Entries),
        };
    }

    private Node Nested(SourceSpan span, Func<SourceSpan, Node> read)
    {
        if (_depth == DeepestNesting)
        {
            // Reading on would cost what the nesting was built to cost.
            _bag.Add(Wording.TooDeep(span, DeepestNesting));
            _isWhole = false;
            return new Unreadable(span);
        }

        _depth++;
        var node = read(span);
        _depth--;
        return node;
    }

    private Sequence Items(SourceSpan span)
    {
        var items = ImmutableArray.CreateBuilder<Node>();
        while (_isWhole && _events.MoveNext() && _events.Current is not SequenceEnd)
        {
            items.Add(Value());
        }

        return new Sequence(items.ToImmutable(), span);
    }

    private Mapping Entries(SourceSpan span)
    {
        var isBlock = _events.Current is MappingStart { Style: MappingStyle.Block };
        var entries = ImmutableArray.CreateBuilder<Entry>();
        var lines = new Dictionary<string, int>(StringComparer.Ordinal);
        while (_isWhole && _events.MoveNext() && _events.Current is not MappingEnd)
        {
            var key = Value();
            if (!_isWhole)
            {
                break;
            }

            _events.MoveNext();
            var value = Value();
            if (Accept(key, lines) is { } word)
            {
                entries.Add(new Entry(word, value));
            }
        }

        return new Mapping(entries.ToImmutable(), isBlock && entries.Count > 0 ? entries[0].Key.Span : span);
    }

    private Scalar? Accept(Node key, Dictionary<string, int> lines)
    {
        switch (key)
        {
            case Mapping or Sequence:
                _bag.Add(Wording.KeyIsNotAWord(key.Span));
                return null;
            case Scalar { Text: "<<", IsPlain: true }:
                _bag.Add(Wording.MergeKey(key.Span));
                return null;
            case Scalar word when lines.TryAdd(word.Text, word.Span.Line):
                return word;
            case Scalar word:
                _bag.Add(Wording.DuplicateKey(word.Span, word.Text, lines[word.Text]));
                return null;
            default:
                return null;
        }
    }

    private void RefuseProperties(NodeEvent node, SourceSpan span)
    {
        if (!node.Anchor.IsEmpty)
        {
            _bag.Add(Wording.AliasOrAnchor(span, $"&{node.Anchor.Value}"));
        }

        if (!node.Tag.IsEmpty)
        {
            _bag.Add(Wording.Tag(span));
        }
    }

    private SourceSpan SpanOf(ParsingEvent e) =>
        _source.SpanAt((int)e.Start.Index, (int)(e.End.Index - e.Start.Index));
}
