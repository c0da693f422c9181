using System.Collections.Immutable;

namespace PaperFlock.Diagnostics;

/// <summary>Collects what one run finds, in the order found; hands it out in the order of the file. Not for sharing between threads.</summary>
public sealed class DiagnosticBag
{
    private readonly List<Diagnostic> _found = [];

    public bool HasErrors { get; private set; }

    public int Count => _found.Count;

    public void Add(Diagnostic diagnostic)
    {
        ArgumentNullException.ThrowIfNull(diagnostic);
        _found.Add(diagnostic);
        HasErrors |= diagnostic.Severity == Severity.Error;
    }

    /// <summary>
    /// By line, then column; what concerns the whole file comes first. At one place errors precede warnings, and the
    /// rest goes by code and message, so that the same faults always read the same way.
    /// </summary>
    public ImmutableArray<Diagnostic> ToSorted() =>
    [
        .. _found
            .OrderBy(d => d.Span.Line)
            .ThenBy(d => d.Span.Column)
            .ThenByDescending(d => d.Severity)
            .ThenBy(d => d.Code, StringComparer.Ordinal)
            .ThenBy(d => d.Message, StringComparer.Ordinal),
    ];
}
