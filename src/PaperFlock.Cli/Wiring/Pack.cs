using System.Collections.Immutable;
using PaperFlock.Printing;

namespace PaperFlock.Cli.Wiring;

/// <summary>What goes to the printer: one document for each way of printing.</summary>
internal sealed record Pack(ImmutableArray<PackDocument> Documents);

/// <param name="Suffix">What follows the flock's name in the file name: empty for the pack itself, such as <c>-wall</c> for a document beside it.</param>
internal sealed record PackDocument(string Suffix, PrintDocument Print);
