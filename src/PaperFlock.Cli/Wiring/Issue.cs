using PaperFlock.Sheets;

namespace PaperFlock.Cli.Wiring;

/// <summary>An issue of a pack, bound into documents.</summary>
internal sealed record Issue(Pack Pack, ComposedIssue Composed);
