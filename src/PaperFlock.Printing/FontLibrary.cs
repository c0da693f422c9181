using PaperFlock.Layout;

namespace PaperFlock.Printing;

/// <summary>The faces inside the program, each loaded once for the process. Nothing is read from the system.</summary>
public static class FontLibrary
{
    public static ITextMeasurer Measurer => throw new NotSupportedException();

    /// <summary>The first character of <paramref name="text"/> that <paramref name="face"/> cannot show, as a string (it may be a surrogate pair); null when it shows all.</summary>
    public static string? FirstMissing(string text, Face face) => throw new NotSupportedException($"{text}{face}");
}
