namespace PaperFlock.Sheets.Issues;

/// <param name="Record">Null where there is none that can be trusted.</param>
/// <param name="Fault">What is wrong; none only where there is a record.</param>
public sealed record RecordReading(IssueRecord? Record, RecordFault Fault = RecordFault.None);

public enum RecordFault
{
    None,

    /// <summary>Larger than any that was written.</summary>
    TooLarge,

    /// <summary>Something else altogether.</summary>
    Foreign,

    /// <summary>Of a format that a later version writes.</summary>
    Newer,

    /// <summary>Cut short, or not as it was written.</summary>
    Altered,
}
