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
        var right = rows.Select(r => r.Ewe).OfType<DraftEwe>().ToList();
        if (right.Count == 0 || !read(right).Found.Any(IsError))
        {
            return rows;
        }

        // Something is wrong with some: one after another shows which, and a tag twice is the later one's fault.
        var taken = new List<DraftEwe>();
        var tried = ImmutableArray.CreateBuilder<ListedEwe>();
        foreach (var row in rows)
        {
            if (row.Ewe is null)
            {
                tried.Add(row);
                continue;
            }

            taken.Add(row.Ewe);
            var (source, found) = read(taken);
            var errors = found.Where(IsError).ToArray();
            foreach (var error in errors)
            {
                bag.Add(error with { Span = CellOf(error, source, row) });
            }

            if (errors.Length > 0)
            {
                taken.RemoveAt(taken.Count - 1);
            }

            tried.Add(errors.Length == 0 ? row : row with { Ewe = null });
        }

        return tried.ToImmutable();
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
