namespace PaperFlock.Flocks.Editing;

/// <summary>Which ewe of a flock file a place in it belongs to, and which of her keys: for what is wrong with a file whose ewes came from elsewhere.</summary>
public sealed class EwePlaces
{
    private readonly SourceText _source;
    private readonly List<(int Start, int Ewe, string Key)> _keys = [];
    private readonly int _end;

    public EwePlaces(SourceText source)
    {
        _source = source;
        if ((TreeBuilder.Build(source, new DiagnosticBag()) as Mapping)?.Entries.FirstOrDefault(e => e.Key.Text == "ewes")?.Value is Sequence { Items: [.., var last] } ewes)
        {
            (Count, _end) = (ewes.Items.Length, last.Extent.End);
            _keys.AddRange(ewes.Items.SelectMany((item, ewe) => ((item as Mapping)?.Entries ?? []).Select(e => (e.Key.Extent.Start, ewe, e.Key.Text))));
        }
    }

    /// <summary>How many ewes there are.</summary>
    public int Count { get; }

    /// <returns>From 0; null for a place that is in no ewe.</returns>
    public (int Ewe, string Key)? At(SourceSpan span)
    {
        var offset = span.IsWholeFile ? -1 : _source.OffsetOf(span.Line) + span.Column - 1;
        var after = _keys.BinarySearch((offset, int.MaxValue, ""), Comparer<(int Start, int Ewe, string Key)>.Create((a, b) => (a.Start, a.Ewe).CompareTo((b.Start, b.Ewe))));
        var at = ~after - 1;
        return at < 0 || offset > _end ? null : (_keys[at].Ewe, _keys[at].Key);
    }
}
