using System.Text;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Packs;

/// <summary>What is known of the issues of a pack that were printed before.</summary>
/// <param name="File">What it was read from, as the user knows it.</param>
/// <param name="Record">Null where nothing is known.</param>
/// <param name="IsDamaged">There was a record, and it is not whole.</param>
public sealed record EarlierIssue(string File, IssueRecord? Record, bool IsDamaged)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <param name="bytes">Null where there is no such file.</param>
    public static EarlierIssue Read(string file, byte[]? bytes)
    {
        if (bytes is null)
        {
            return new EarlierIssue(file, null, IsDamaged: false);
        }

        try
        {
            var record = IssueRecordText.Read(Utf8.GetString(bytes));
            return new EarlierIssue(file, record, record is null);
        }
        catch (DecoderFallbackException)
        {
            return new EarlierIssue(file, null, IsDamaged: true);
        }
    }
}
