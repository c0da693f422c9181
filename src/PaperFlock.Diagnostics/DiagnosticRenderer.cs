namespace PaperFlock.Diagnostics;

/// <summary>Draws diagnostics as text: where, what, the line itself, a caret under the word, and the advice.</summary>
public static class DiagnosticRenderer
{
    /// <summary>Of one code: eight of five lines each fill a screen, and whoever has more has made one slip many times.</summary>
    public const int MostOfAKind = 8;

    private const string Margin = "    ";

    /// <param name="diagnostics">Drawn in the order given; <see cref="DiagnosticBag.ToSorted"/> gives that of the file.</param>
    /// <returns>As <see cref="Lines"/>, each ended by LF.</returns>
    public static string Render(SourceText source, ImmutableArray<Diagnostic> diagnostics) =>
        string.Concat(Lines(source, diagnostics).Select(line => line.Text + "\n"));

    /// <returns>
    /// A block for each, <see cref="MostOfAKind"/> at most of each code, with an empty line between them; how many more there
    /// are; and the summary last. None when there is nothing to say.
    /// </returns>
    public static IEnumerable<DiagnosticLine> Lines(SourceText source, ImmutableArray<Diagnostic> diagnostics)
    {
        if (diagnostics.IsEmpty)
        {
            return [];
        }

        var drawn = new Dictionary<string, int>(StringComparer.Ordinal);
        var shown = diagnostics.Where(d => (drawn[d.Code] = drawn.GetValueOrDefault(d.Code) + 1) <= MostOfAKind);
        return [.. shown.SelectMany(d => Block(source, d)), .. More(diagnostics).Append(Summary(diagnostics)).Select(text => new DiagnosticLine(text))];
    }

    private static IEnumerable<DiagnosticLine> Block(SourceText source, Diagnostic diagnostic)
    {
        var span = diagnostic.Span;
        var place = span.IsWholeFile ? source.Path : string.Create(CultureInfo.InvariantCulture, $"{source.Path}:{span.Line}:{span.Column}");
        yield return new($"{place}: {(diagnostic.Severity == Severity.Error ? "error" : "warning")} {diagnostic.Code}: {diagnostic.Message}") { IsHeading = true };
        if (!span.IsWholeFile)
        {
            var (line, carets) = CaretLine.Draw(source.LineSpan(span.Line), span.Column - 1, span.Length);
            yield return new(Margin + line);
            yield return new(Margin + carets) { CaretsOf = diagnostic.Severity };
        }

        foreach (var line in diagnostic.Advice.Split('\n'))
        {
            yield return new(Margin + line);
        }

        yield return new("");
    }

    /// <summary>A line for each code of which some are not drawn: how many, and where they begin.</summary>
    private static IEnumerable<string> More(ImmutableArray<Diagnostic> diagnostics) =>
        diagnostics.GroupBy(d => d.Code).Where(kind => kind.Count() > MostOfAKind).Select(kind => string.Create(
            CultureInfo.InvariantCulture,
            $"{kind.Key}: {kind.Count() - MostOfAKind} more like these, from line {kind.ElementAt(MostOfAKind).Span.Line} on"));

    /// <summary>Such as "2 errors, 1 warning".</summary>
    private static string Summary(ImmutableArray<Diagnostic> diagnostics)
    {
        var errors = diagnostics.Count(d => d.Severity == Severity.Error);
        var warnings = diagnostics.Length - errors;
        return (errors, warnings) switch
        {
            (_, 0) => Count(errors, "error"),
            (0, _) => Count(warnings, "warning"),
            _ => $"{Count(errors, "error")}, {Count(warnings, "warning")}",
        };
    }

    private static string Count(int number, string noun) =>
        string.Create(CultureInfo.InvariantCulture, $"{number} {noun}{(number == 1 ? "" : "s")}");
}

/// <summary>A line of what is drawn, and what it is, so that a terminal may colour it as it likes.</summary>
public readonly record struct DiagnosticLine(string Text)
{
    /// <summary>Such as <c>flock.yaml:41:12: error FLK012: message</c>.</summary>
    public bool IsHeading { get; init; }

    /// <summary>Of a line of carets: what the diagnostic is; null for any other.</summary>
    public Severity? CaretsOf { get; init; }
}
