namespace PaperFlock.Pdf.Painting;

/// <summary>Which glyphs of which faces a document uses, and for which characters.</summary>
internal sealed class GlyphUse
{
    private readonly Dictionary<ushort, Rune>[] _characters = [.. Enum.GetValues<Face>().Select(_ => new Dictionary<ushort, Rune>())];

    /// <summary>A character for each glyph used, by rising number.</summary>
    public IReadOnlyDictionary<ushort, Rune> Of(Face face) => new SortedDictionary<ushort, Rune>(_characters[(int)face]);

    /// <summary>Of characters that share a glyph the first in Unicode counts: a space is a space, and not one that never breaks.</summary>
    public void Add(Face face, ushort glyph, Rune character)
    {
        var characters = _characters[(int)face];
        if (!characters.TryGetValue(glyph, out var before) || character < before)
        {
            characters[glyph] = character;
        }
    }
}
