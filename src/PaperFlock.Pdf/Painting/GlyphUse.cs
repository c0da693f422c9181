namespace PaperFlock.Pdf.Painting;

/// <summary>Which glyphs of which faces a document uses, and for which characters.</summary>
internal sealed class GlyphUse
{
    // Of each face by the number of the glyph. U+0000 prints nothing, so it stands for a glyph that is not used.
    private readonly Rune[][] _characters = [.. Enum.GetValues<Face>().Select(face => new Rune[FontLibrary.Of(face).File.Glyphs.Count])];

    /// <summary>A character for each glyph used, by rising number.</summary>
    public IReadOnlyDictionary<ushort, Rune> Of(Face face) =>
        new SortedDictionary<ushort, Rune>(_characters[(int)face].Index().Where(glyph => glyph.Item != default).ToDictionary(glyph => (ushort)glyph.Index, glyph => glyph.Item));

    /// <summary>Of characters that share a glyph the first in Unicode counts: a space is a space, and not one that never breaks.</summary>
    public void Add(Face face, ushort glyph, Rune character)
    {
        ref var before = ref _characters[(int)face][glyph];
        if (before == default || character < before)
        {
            before = character;
        }
    }
}
