using System.Text.RegularExpressions;
using PaperFlock.Flocks.Drafting;

namespace PaperFlock.Flocks.Lists;

/// <summary>Tries the ewes of a list on the reader of flock files, so that what it would refuse is refused at the cell it comes from.</summary>
internal static partial class ListTrial
{
    /// <param name="read">What the reader says of a flock file with these ewes in it, and of which text.</param>
    /// <returns>The rows with those refused that the reader refuses; why is in the bag.</returns>
    public static ImmutableArray<ListedEwe> Of(
        ImmutableArray<ListedEwe> rows, Func<IReadOnlyList<DraftEwe>, (SourceText Source, ImmutableArray<Diagnostic> Found)> read, DiagnosticBag bag)
    {
        if (rows.All(r => r.Ewe is null))
        {
            return rows;
        }

        var taken = new List<DraftEwe>();
        var refused = new HashSet<ListedEwe>(ReferenceEqualityComparer.Instance);
        Try(rows.RemoveAll(r => r.Ewe is null));
        return [.. rows.Select(r => refused.Contains(r) ? r with { Ewe = null } : r)];

        // Something is wrong with some: halves of halves show which, in the order of the list, so that a tag twice is the later one's fault.
        void Try(ImmutableArray<ListedEwe> some)
        {
            var (source, found) = read([.. taken, .. some.Select(r => r.Ewe!)]);
            if (!found.Any(IsError))
            {
                taken.AddRange(some.Select(r => r.Ewe!));
            }
            else if (some.Length == 1)
            {
                bag.AddRange(found.Where(IsError).Select(error => error with { Span = CellOf(error, source, some[0]) }));
                refused.Add(some[0]);
            }
            else
            {
                Try(some[..(some.Length / 2)]);
                Try(some[(some.Length / 2)..]);
            }
        }
    }

    private static SourceSpan CellOf(Diagnostic error, SourceText source, ListedEwe row)
    {
        var line = error.Span.IsWholeFile ? string.Empty : source.Line(error.Span.Line);
        return row.Cells.TryGetValue(KeyOfLine().Match(line).Groups["key"].Value, out var cell) ? cell.Span : row.Cells["tag"].Span;
    }

    private static bool IsError(Diagnostic d) => d.Severity == Severity.Error;

    [GeneratedRegex("^ *(- )?(?<key>[a-z-]+):")]
    private static partial Regex KeyOfLine();
}
