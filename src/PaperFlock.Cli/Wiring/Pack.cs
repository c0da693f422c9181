using System.Collections.Immutable;
using PaperFlock.Pdf;
using PaperFlock.Sheets;

namespace PaperFlock.Cli.Wiring;

/// <summary>What goes to the printer: a document for each way of printing.</summary>
internal sealed record Pack(ImmutableArray<PackDocument> Documents);

/// <param name="Suffix">What follows the flock's name in the file name: empty for the pack itself, such as <c>-wall</c> for a document beside it.</param>
/// <param name="Uses">What becomes of each page of <paramref name="Print"/>, one for each: what is cut up is printed on card.</param>
internal sealed record PackDocument(string Suffix, PrintDocument Print, ImmutableArray<SheetUse> Uses);
