using PaperFlock.Printing.Fonts;
using SkiaSharp;

namespace PaperFlock.Printing.Painting;

/// <summary>Turns text into placed glyphs, one after another by their advances.</summary>
/// <remarks>
/// The PDF writer keeps glyphs in one string only where each stands exactly, to the last bit of a float, where the
/// advances before it lead; elsewhere it moves the pen for every glyph, which makes a page five times as long. So the places
/// are summed in floats, in the order it sums them, and from whole font units as in the file.
/// </remarks>
internal sealed class GlyphRun : IDisposable
{
    private readonly SKTextBlobBuilder _builder = new();
    private ushort[] _ids = new ushort[256];
    private float[] _places = new float[256];

    /// <returns>Null for text that prints nothing.</returns>
    public SKTextBlob? Build(string text, FontFace face, SKFont font)
    {
        if (_ids.Length < text.Length)
        {
            Array.Resize(ref _ids, text.Length);
            Array.Resize(ref _places, text.Length);
        }

        var scale = font.Size / face.UnitsPerEm;
        var place = 0f;
        var count = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            var glyph = face.Glyphs[rune];
            if (!glyph.IsPrinted)
            {
                continue;
            }

            _ids[count] = glyph.Id;
            _places[count++] = place;
            place += scale * glyph.Advance;
        }

        if (count == 0)
        {
            return null;
        }

        _builder.AddHorizontalRun(_ids.AsSpan(0, count), font, _places.AsSpan(0, count), 0);
        return _builder.Build();
    }

    public void Dispose() => _builder.Dispose();
}
