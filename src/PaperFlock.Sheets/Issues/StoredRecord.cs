namespace PaperFlock.Sheets.Issues;

/// <summary>A record as it is kept.</summary>
/// <param name="Sum">Fingerprint of the same with this left empty.</param>
internal sealed record StoredRecord(string Format, int Version, string Sum, IssueRecord Record);

/// <summary>What any version of it begins with.</summary>
internal sealed record StoredRecordHead(string Format, int Version);
