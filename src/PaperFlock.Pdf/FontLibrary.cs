using PaperFlock.Pdf.Fonts;

namespace PaperFlock.Pdf;

/// <summary>The faces inside the program, each loaded once for the process. Nothing is read from the system.</summary>
public static class FontLibrary
{
    private static readonly Lazy<FontFace>[] Faces = [.. Enum.GetValues<Face>().Select(face => new Lazy<FontFace>(() => new FontFace(FileOf(face))))];

    public static ITextMeasurer Measurer { get; } = new TextMeasurer();

    /// <summary>The first character of <paramref name="text"/> that <paramref name="face"/> cannot show, as a string (it may be a surrogate pair); null when it shows all.</summary>
    /// <remarks>
    /// Control and format characters, line feeds among them, print nothing and are never missing.
    /// A combining mark is always missing, even where the face has it: text is set without shaping, so the mark would
    /// not stand over its letter. The one-character form ("ŵ" rather than "w" and U+0302) is what prints.
    /// </remarks>
    public static string? FirstMissing(string text, Face face)
    {
        // Every face has all of ASCII, and most flocks are written in it: a file is then checked without loading a font.
        if (Ascii.IsValid(text))
        {
            return null;
        }

        var font = Of(face);
        for (var i = 0; i < text.Length;)
        {
            var whole = Rune.TryGetRuneAt(text, i, out var rune);
            var length = whole ? rune.Utf16SequenceLength : 1;
            if (!whole || font.IsMissing(rune))
            {
                return text.Substring(i, length);
            }

            i += length;
        }

        return null;
    }

    public static FontFace Of(Face face) => Faces[(int)face].Value;

    private static string FileOf(Face face) => face switch
    {
        Face.Text => "AtkinsonHyperlegibleNext-Regular.ttf",
        Face.TextBold => "AtkinsonHyperlegibleNext-Bold.ttf",
        Face.Mono => "AtkinsonHyperlegibleMono-Regular.ttf",
        Face.MonoBold => "AtkinsonHyperlegibleMono-Bold.ttf",
        _ => throw new ArgumentOutOfRangeException(nameof(face), face, null),
    };
}
