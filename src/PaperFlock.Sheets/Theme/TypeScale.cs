namespace PaperFlock.Sheets.Theme;

/// <summary>
/// The sizes of type there are. Sizes for a reading distance are given as millimetres of capital height,
/// because a point size says nothing about how tall a letter is; running text is in points.
/// </summary>
internal static class TypeScale
{
    /// <summary>Capital height of both families as a fraction of the em, read from the font files.</summary>
    public const double CapOfEm = 0.668;

    // Reading distances: 22 minutes of arc, h = 2 D tan(a/2); 12.8 mm at 2 m, 6.4 mm at 1 m, 3.2 mm at 0.5 m
    // (ISO 9241-3 by way of its published summaries: 20 to 22 minutes preferred, 16 the least).
    public const double CapAtOneMetre = 6.4;
    public const double CapAtHalfMetre = 3.2;

    /// <summary>16 minutes of arc at a metre: nothing that is acted on across the room is set smaller.</summary>
    public const double LeastCapAtOneMetre = 4.7;

    /// <summary>Rows of a table that stand together on its last page: one alone is overlooked.</summary>
    public const int LeastRows = 4;

    public static readonly TextStyle Title = Cap(Face.TextBold, 6.8);
    public static readonly TextStyle SmallerTitle = Cap(Face.TextBold, 5.4);
    public static readonly TextStyle Code = Cap(Face.MonoBold, 4.6);
    public static readonly TextStyle LongCode = Cap(Face.MonoBold, 3.4);
    public static readonly TextStyle Heading = new(Face.TextBold, 15);
    public static readonly TextStyle Lead = new(Face.Text, 13);

    /// <summary>Running text: 12 pt is the least the clear print guidance of the RNIB allows.</summary>
    public static readonly TextStyle Body = new(Face.Text, 12);
    public static readonly TextStyle BodyBold = new(Face.TextBold, 12);

    /// <summary>Captions of boxes and heads of columns.</summary>
    public static readonly TextStyle Label = new(Face.Text, 10);
    public static readonly TextStyle LabelBold = new(Face.TextBold, 10);

    public static readonly TextStyle Tag = new(Face.MonoBold, 12);
    /// <summary>The one line that may be smaller than 9 pt: it is looked up, not read.</summary>
    public static readonly TextStyle Control = new(Face.Mono, 8.5);

    /// <summary>Height of a capital in points.</summary>
    public static double CapitalOf(TextStyle style) => style.Size * CapOfEm;

    public static TextStyle Cap(Face face, double millimetres) => new(face, Units.Mm(millimetres) / CapOfEm);
}
