using System.Collections.Immutable;

namespace PaperFlock.Cli.Wiring;

/// <summary>An issue as it goes into its files.</summary>
/// <param name="Documents">PDFs, in the order of the pack.</param>
/// <param name="Record">Empty where none is kept.</param>
internal sealed record PrintedIssue(ImmutableArray<ReadOnlyMemory<byte>> Documents, ReadOnlyMemory<byte> Record);

internal static class IssuePrinting
{
    public static PrintedIssue Print(this ILine line, Issue issue) =>
        new([.. issue.Pack.Documents.Select(line.Print)], issue.Composed.Record?.ToBytes());
}
