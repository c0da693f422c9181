using System.Text;
using PaperFlock.Layout;

namespace PaperFlock.Printing.Pdf;

/// <summary>Which glyphs of which faces pages have used, and for which characters. Not thread-safe.</summary>
internal sealed class GlyphUse
{
    // Of each face a character for each glyph, 0 for a glyph that is not used; null for a face that is not.
    private readonly int[]?[] _characters = new int[]?[Enum.GetValues<Face>().Length];

    public bool Has(Face face) => _characters[(int)face] is not null;

    /// <summary>The glyphs used, by rising number.</summary>
    public IEnumerable<(ushort Glyph, Rune Character)> Of(Face face)
    {
        var characters = _characters[(int)face] ?? [];
        for (var id = 0; id < characters.Length; id++)
        {
            if (characters[id] != 0)
            {
                yield return ((ushort)id, new Rune(characters[id]));
            }
        }
    }

    /// <summary>Room to note the characters of a face in, by glyph.</summary>
    public Span<int> Note(Face face) => _characters[(int)face] ??= new int[FontLibrary.Of(face).GlyphCount];

    /// <summary>Of characters that share a glyph the first counts, whichever is met first: the bytes must not depend on who painted what.</summary>
    public static void Note(Span<int> characters, ushort glyph, int character)
    {
        ref var noted = ref characters[glyph];
        if (noted == 0 || character < noted)
        {
            noted = character;
        }
    }

    public void Add(GlyphUse other)
    {
        foreach (var face in Enum.GetValues<Face>())
        {
            if (other.Has(face))
            {
                var characters = Note(face);
                foreach (var (glyph, character) in other.Of(face))
                {
                    Note(characters, glyph, character.Value);
                }
            }
        }
    }
}
