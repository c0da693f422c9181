namespace PaperFlock.Diagnostics;

/// <summary>Collects what one run finds, in the order found; hands it out in the order of the file. Not for sharing between threads.</summary>
/// <param name="most">No more are taken in.</param>
public sealed class DiagnosticBag(int most = int.MaxValue)
{
    private readonly List<Diagnostic> _found = [];

    public bool HasErrors { get; private set; }

    /// <param name="found">Null where a check has found nothing.</param>
    /// <exception cref="BagFullException">There are as many as there may be.</exception>
    public void Add(Diagnostic? found)
    {
        if (found is null)
        {
            return;
        }

        if (_found.Count >= most)
        {
            throw new BagFullException();
        }

        _found.Add(found);
        HasErrors |= found.Severity == Severity.Error;
    }

    /// <summary>Adds what is wrong with something that could not be read.</summary>
    /// <returns>Nothing in place of a value.</returns>
    /// <exception cref="BagFullException">There are as many as there may be.</exception>
    public T? Refuse<T>(Diagnostic diagnostic)
    {
        Add(diagnostic);
        return default;
    }

    /// <exception cref="BagFullException">There are as many as there may be.</exception>
    public void AddRange(IEnumerable<Diagnostic> diagnostics)
    {
        foreach (var diagnostic in diagnostics)
        {
            Add(diagnostic);
        }
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

/// <summary>A <see cref="DiagnosticBag"/> has as many as it was made for; what was found is still in it.</summary>
public sealed class BagFullException : Exception;
