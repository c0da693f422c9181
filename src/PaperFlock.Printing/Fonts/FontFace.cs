using SkiaSharp;

namespace PaperFlock.Printing.Fonts;

/// <summary>One font file, kept for the life of the process. Thread-safe.</summary>
internal sealed class FontFace
{
    private readonly Lazy<FontProgram> _program;

    private FontFace(string file, SKTypeface typeface)
    {
        Typeface = typeface;
        _program = new Lazy<FontProgram>(() => FontProgram.Of(file, typeface));
        UnitsPerEm = typeface.UnitsPerEm;
        using var font = FontAtEm(typeface);
        var metrics = font.Metrics;
        Ascent = Ems(-metrics.Ascent);
        Descent = Ems(metrics.Descent);
        CapHeight = Ems(metrics.CapHeight);
        Glyphs = new GlyphTable(typeface);
    }

    public SKTypeface Typeface { get; }

    public int UnitsPerEm { get; }

    /// <summary>Numbers of glyphs are below it.</summary>
    public int GlyphCount => Typeface.GlyphCount;

    /// <summary>Only asked for when a PDF is written.</summary>
    public FontProgram Program => _program.Value;

    public GlyphTable Glyphs { get; }

    /// <summary>Of the em; so are the next two. The font's own line metrics, which no letter of it passes and which its bold and mono cousins share.</summary>
    public double Ascent { get; }

    public double Descent { get; }

    public double CapHeight { get; }

    public static FontFace Load(string file)
    {
        using var data = SKData.CreateCopy(Read(file));
        return new FontFace(file, SKTypeface.FromData(data) ?? throw new InvalidOperationException($"{file} is not a font"));
    }

    /// <summary>The bytes of a font file.</summary>
    internal static byte[] Read(string file)
    {
        using var stream = typeof(FontFace).Assembly.GetManifestResourceStream(file)
            ?? throw new InvalidOperationException($"{file} is not in the program");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>Sets text as a printer will: outlines placed exactly, nothing snapped to the pixels of a screen.</summary>
    public SKFont FontAt(float size) => FontAt(Typeface, size);

    internal static SKFont FontAtEm(SKTypeface typeface) => FontAt(typeface, typeface.UnitsPerEm);

    private static SKFont FontAt(SKTypeface typeface, float size) => new(typeface, size)
    {
        Hinting = SKFontHinting.None,
        Subpixel = true,
        LinearMetrics = true,
        BaselineSnap = false,
        Edging = SKFontEdging.Antialias,
    };

    // The file holds whole units; 16.16 arithmetic below returns them a hair off.
    private double Ems(float units) => Math.Round(units) / UnitsPerEm;
}
