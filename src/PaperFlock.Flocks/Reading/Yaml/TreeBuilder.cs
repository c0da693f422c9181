using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace PaperFlock.Flocks.Reading.Yaml;

/// <summary>
/// Builds the tree from parser events, so that duplicate keys, aliases and depth are reported by us, with places, and
/// before they can cost anything: recursion goes no deeper than <see cref="DeepestNesting"/>, and nothing is ever copied.
/// </summary>
internal sealed class TreeBuilder(SourceText source, DiagnosticBag bag)
{
    /// <summary>The format itself goes four deep: a mark, in the marks, of a ewe, in the ewes.</summary>
    public const int DeepestNesting = 8;

    private readonly Parser _events = new(new Scanner(new StringReader(source.Text), skipComments: true));
    private int _depth;
    private bool _isWhole = true;

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
            var isNamed = fault.Message.Length > 0;
            bag.Add(SyntaxFault.Explain(source, (int)fault.Start.Index, isNamed ? (int)fault.End.Index : source.Text.Length, fault.Message));
        }

        return null;
    }

    private Node? Document()
    {
        Advance<StreamStart>();
        Move();
        if (_events.Current is StreamEnd)
        {
            return bag.Refuse<Node>(FlockMessages.EmptyFile());
        }

        Move();
        var root = Value();
        if (!_isWhole)
        {
            return null;
        }

        Advance<DocumentEnd>();
        Move();
        return _events.Current is DocumentStart second ? bag.Refuse<Node>(FlockMessages.SecondDocument(SpanOf(second))) : root;
    }

    /// <summary>
    /// The parser has its own ways of meeting an unclosed bracket or a broken tag, by exceptions of many kinds. To us
    /// each of them is a text that is not YAML from the last event on, and nothing that anyone can type may do more.
    /// </summary>
    private bool Move()
    {
        try
        {
            return _events.MoveNext();
        }
        catch (Exception fault) when (fault is not YamlException)
        {
            throw NoSense();
        }
    }

    private YamlException NoSense()
    {
        var reached = _events.Current?.End ?? Mark.Empty;
        return new YamlException(reached, reached, "");
    }

    private void Advance<T>()
        where T : ParsingEvent
    {
        Move();
        if (_events.Current is not T)
        {
            throw NoSense();
        }
    }

    /// <summary>Reads the value whose first event is current, and leaves its last event current.</summary>
    private Node Value()
    {
        var current = _events.Current!;
        var span = SpanOf(current);
        if (current is AnchorAlias alias)
        {
            bag.Add(FlockMessages.AliasOrAnchor(span, $"*{alias.Value}"));
            return new Unreadable(span);
        }

        if (current is not NodeEvent node)
        {
            // An empty key after a dash, for one, comes out as a value too few.
            throw NoSense();
        }

        RefuseProperties(node, span);
        return node switch
        {
            YamlDotNet.Core.Events.Scalar scalar => new Scalar(scalar.Value, scalar.Style == ScalarStyle.Plain, span)
            {
                Extent = new TextRange(Index(scalar.Start), Math.Max(Index(scalar.Start), Index(scalar.End))),
                DoubtfulRemark = scalar.Style == ScalarStyle.Plain ? DoubtfulRemark(Index(scalar.End)) : null,
            },
            SequenceStart => Placed(Nested(span, Items), current),
            _ => Placed(Nested(span, Entries), current),
        };
    }

    private SourceSpan? DoubtfulRemark(int at)
    {
        var rest = source.Text.AsSpan(at).TrimStart(' ');
        return rest is ['#', var next, ..] && char.IsLetterOrDigit(next) ? source.SpanAt(source.Text.Length - rest.Length, rest.Length) : null;
    }

    /// <summary>Of a block, the end is where the next thing begins: only brackets have places of their own, and the parser leaves the closing one out.</summary>
    private Node Placed(Node node, ParsingEvent start)
    {
        // One pair in square brackets has no brackets of its own, and the parser gives it no place.
        if (node is Mapping { IsFlow: true, Entries: [var only] } && start.Start.Index == 0 && _depth > 0)
        {
            return node with { Extent = new TextRange(only.Key.Extent.Start, only.Value.Extent.End) };
        }

        var (first, end) = (Index(start.Start), Index(_events.Current?.End ?? start.End));
        var isBracketed = node is Mapping { IsFlow: true } or Sequence { IsFlow: true } && end < source.Text.Length;
        return node with { Extent = new TextRange(first, isBracketed ? end + 1 : end) };
    }

    private Node Nested(SourceSpan span, Func<SourceSpan, Node> read)
    {
        if (_depth == DeepestNesting)
        {
            // Reading on would cost what the nesting was built to cost.
            bag.Add(FlockMessages.TooDeep(span, DeepestNesting));
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
        var isFlow = _events.Current is SequenceStart { Style: SequenceStyle.Flow };
        var items = ImmutableArray.CreateBuilder<Node>();
        while (_isWhole && Move() && _events.Current is not SequenceEnd && HasRoom(items.Count))
        {
            items.Add(Value());
        }

        return new Sequence(items.ToImmutable(), span, isFlow);
    }

    private Mapping Entries(SourceSpan span)
    {
        var isBlock = _events.Current is MappingStart { Style: MappingStyle.Block };
        var entries = ImmutableArray.CreateBuilder<Entry>();
        var lines = new Dictionary<string, int>(StringComparer.Ordinal);
        while (_isWhole && Move() && _events.Current is not MappingEnd && HasRoom(entries.Count))
        {
            var key = Value();
            if (!_isWhole)
            {
                break;
            }

            Move();
            var value = Value();
            if (Accept(key, lines) is { } word)
            {
                entries.Add(new Entry(word, value));
            }
        }

        return new Mapping(entries.ToImmutable(), isBlock && entries.Count > 0 ? entries[0].Key.Span : span, !isBlock);
    }

    /// <summary>What is too long is read no further: the rest would only cost time and memory.</summary>
    private bool HasRoom(int entries)
    {
        if (entries < FlockReader.LongestList)
        {
            return true;
        }

        bag.Add(FlockMessages.ListTooLong(SpanOf(_events.Current!), FlockReader.LongestList));
        _isWhole = false;
        return false;
    }

    private Scalar? Accept(Node key, Dictionary<string, int> lines) => key switch
    {
        Mapping or Sequence => bag.Refuse<Scalar>(FlockMessages.KeyIsNotAWord(key.Span)),
        Scalar { Text: "<<", IsPlain: true } => bag.Refuse<Scalar>(FlockMessages.MergeKey(key.Span)),
        Scalar word when lines.TryAdd(word.Text, word.Span.Line) => word,
        Scalar word => bag.Refuse<Scalar>(FlockMessages.DuplicateKey(word.Span, word.Text, lines[word.Text])),
        _ => null,
    };

    private void RefuseProperties(NodeEvent node, SourceSpan span)
    {
        bag.Add(node.Anchor.IsEmpty ? null : FlockMessages.AliasOrAnchor(span, $"&{node.Anchor.Value}"));
        bag.Add(node.Tag.IsEmpty ? null : FlockMessages.Tag(span));
    }

    /// <summary>Of an empty value in brackets the parser may put the end before the start.</summary>
    private SourceSpan SpanOf(ParsingEvent e) => source.SpanAt(Index(e.Start), Math.Max(0, (int)(e.End.Index - e.Start.Index)));

    /// <summary>The parser counts a line past an empty document.</summary>
    private int Index(Mark mark) => Math.Min((int)mark.Index, source.Text.Length);
}
