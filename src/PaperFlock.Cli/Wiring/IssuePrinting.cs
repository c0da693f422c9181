using System.Collections.Immutable;
using PaperFlock.Layout;

namespace PaperFlock.Cli.Wiring;

/// <summary>An issue as it goes into its files.</summary>
/// <param name="Documents">PDFs, in the order of the pack.</param>
/// <param name="Record">Empty where none is kept.</param>
internal sealed record PrintedIssue(ImmutableArray<ReadOnlyMemory<byte>> Documents, ReadOnlyMemory<byte> Record);

internal static class IssuePrinting
{
    /// <summary>All documents and the record, at once.</summary>
    public static PrintedIssue Print(this ILine line, Issue issue)
    {
        var made = InOrder.All<ReadOnlyMemory<byte>>([.. issue.Pack.Documents.Select(document => (Func<ReadOnlyMemory<byte>>)(() => line.Print(document))), () => issue.Composed.Record?.ToBytes()]);
        return new PrintedIssue(made[..^1], made[^1]);
    }
}
