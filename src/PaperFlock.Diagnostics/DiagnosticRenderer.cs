using System.Text;

namespace PaperFlock.Diagnostics;

/// <summary>Draws diagnostics as text: where, what, the line itself, a caret under the word, and the advice.</summary>
public static class DiagnosticRenderer
{
    /// <summary>Of one code: eight of five lines each fill a screen, and whoever has more has made one slip many times.</summary>
    public const int MostOfAKind = 8;

    private const string Margin = "    ";

    /// <param name="diagnostics">Drawn in the order given; <see cref="DiagnosticBag.ToSorted"/> gives that of the file.</param>
    /// <returns>
    /// A block for each, <see cref="MostOfAKind"/> at most of each code, with an empty line between them; how many more there
    /// are; and the summary last. Empty when there is nothing to say. Lines end in LF.
    /// </returns>
    public static string Render(SourceText source, ImmutableArray<Diagnostic> diagnostics)
    {
        if (diagnostics.IsEmpty)
        {
            return string.Empty;
        }

        var text = new StringBuilder();
        foreach (var diagnostic in Shown(diagnostics))
        {
            var picture = Draw(source, diagnostic);
            text.Append(picture.Heading).Append('\n');
            if (picture.SourceLine is not null)
            {
                text.Append(Margin).Append(picture.SourceLine).Append('\n');
                text.Append(Margin).Append(picture.CaretLine).Append('\n');
            }

            text.Append(Margin).Append(picture.Advice).Append("\n\n");
        }

        foreach (var more in More(diagnostics))
        {
            text.Append(more).Append('\n');
        }

        return text.Append(Summary(diagnostics)).Append('\n').ToString();
    }

    /// <summary>Those that are drawn, in the order given.</summary>
    public static IEnumerable<Diagnostic> Shown(ImmutableArray<Diagnostic> diagnostics)
    {
        var drawn = new Dictionary<string, int>(StringComparer.Ordinal);
        return diagnostics.Where(d => (drawn[d.Code] = drawn.GetValueOrDefault(d.Code) + 1) <= MostOfAKind);
    }

    /// <summary>A line for each code of which some are not drawn: how many, and where they begin.</summary>
    public static IEnumerable<string> More(ImmutableArray<Diagnostic> diagnostics) =>
        diagnostics.GroupBy(d => d.Code).Where(kind => kind.Count() > MostOfAKind).Select(kind => string.Create(
            CultureInfo.InvariantCulture,
            $"{kind.Key}: {kind.Count() - MostOfAKind} more like these, from line {kind.ElementAt(MostOfAKind).Span.Line} on"));

    /// <summary>The parts of one diagnostic, without margins or line breaks.</summary>
    public static DiagnosticPicture Draw(SourceText source, Diagnostic diagnostic)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(diagnostic);
        var span = diagnostic.Span;
        var kind = diagnostic.Severity == Severity.Error ? "error" : "warning";
        var place = span.IsWholeFile
            ? source.Path
            : string.Create(CultureInfo.InvariantCulture, $"{source.Path}:{span.Line}:{span.Column}");
        var heading = $"{place}: {kind} {diagnostic.Code}: {diagnostic.Message}";
        if (span.IsWholeFile)
        {
            return new DiagnosticPicture(heading, null, null, diagnostic.Advice);
        }

        var (line, caret) = CaretLine.Draw(source.LineSpan(span.Line), span.Column - 1, span.Length);
        return new DiagnosticPicture(heading, line, caret, diagnostic.Advice);
    }

    /// <summary>Such as "2 errors, 1 warning"; "no errors" for nothing.</summary>
    public static string Summary(ImmutableArray<Diagnostic> diagnostics)
    {
        var errors = diagnostics.Count(d => d.Severity == Severity.Error);
        var warnings = diagnostics.Length - errors;
        return (errors, warnings) switch
        {
            (0, 0) => "no errors",
            (_, 0) => Count(errors, "error"),
            (0, _) => Count(warnings, "warning"),
            _ => $"{Count(errors, "error")}, {Count(warnings, "warning")}",
        };
    }

    private static string Count(int number, string noun) =>
        string.Create(CultureInfo.InvariantCulture, $"{number} {noun}{(number == 1 ? "" : "s")}");
}
