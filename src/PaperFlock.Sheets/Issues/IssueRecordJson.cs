using System.IO.Hashing;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace PaperFlock.Sheets.Issues;

/// <summary>The record as bytes, and back. What is read is written again: unless that gives the very bytes, sum and all, it is not what this program wrote.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    UseStringEnumConverter = true,
    IgnoreReadOnlyProperties = true,
    RespectRequiredConstructorParameters = true,
    RespectNullableAnnotations = true,
    MaxDepth = MostDepth,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    Converters = [typeof(DayConverter)])]
[JsonSerializable(typeof(StoredRecord))]
[JsonSerializable(typeof(StoredRecordHead))]
[JsonSerializable(typeof(EarlierStoredRecord))]
internal sealed partial class IssueRecordJson : JsonSerializerContext
{
    private const string Format = "PaperFlock issues";

    private const int Version = 3;

    /// <summary>The one before; 1 was a text file (<see cref="IssueRecordText"/>).</summary>
    private const int EarlierVersion = 2;

    /// <summary>A record of 3,000 ewes has a third of it.</summary>
    private const int MostBytes = 1 << 25;

    /// <summary>Names, values and brackets; a record of 3,000 ewes has a third of them.</summary>
    private const int MostTokens = 5_000_000;

    private const int MostDepth = 10;

    public static byte[] Write(IssueRecord record)
    {
        var unsummed = Bytes(Issues.StoredRecord.Of(record, Format, Version));
        // No text can hold this: quotes in one are escaped.
        var at = unsummed.AsSpan().IndexOf("\"sum\":\"\""u8) + "\"sum\":\"".Length;
        return [.. unsummed.AsSpan(0, at), .. Encoding.ASCII.GetBytes(Sum(unsummed)), .. unsummed.AsSpan(at)];
    }

    public static RecordReading Read(ReadOnlySpan<byte> bytes)
    {
        try
        {
            if (IsTooLarge(bytes))
            {
                return new RecordReading(null, RecordFault.TooLarge);
            }

            return JsonSerializer.Deserialize(bytes, Default.StoredRecordHead) switch
            {
                { Format: Format, Version: Version } => Trusted(JsonSerializer.Deserialize(bytes, Default.StoredRecord)?.Record is { IsSound: true } record && bytes.SequenceEqual(Write(record)) ? record : null),
                { Format: Format, Version: EarlierVersion } => Trusted(Earlier(bytes)),
                { Format: Format, Version: > Version } => new RecordReading(null, RecordFault.Newer),
                _ => new RecordReading(null, RecordFault.Foreign),
            };
        }
        catch (JsonException)
        {
            return new RecordReading(null, bytes.StartsWith("{\"format\":\"PaperFlock issues\""u8) ? RecordFault.Altered : RecordFault.Foreign);
        }
    }

    private static RecordReading Trusted(IssueRecord? record) => record is null ? new RecordReading(null, RecordFault.Altered) : new RecordReading(record);

    private static IssueRecord? Earlier(ReadOnlySpan<byte> bytes) =>
        JsonSerializer.Deserialize(bytes, Default.EarlierStoredRecord) is { } stored
        && stored.Record.ToRecord() is { IsSound: true } record
        && stored.Sum == Sum(Bytes(stored with { Sum = string.Empty }))
        && bytes.SequenceEqual(Bytes(stored))
            ? record
            : null;

    /// <exception cref="JsonException">It is no JSON, or nested deeper than a record is.</exception>
    private static bool IsTooLarge(ReadOnlySpan<byte> bytes)
    {
        var reader = new Utf8JsonReader(bytes.Length > MostBytes ? [] : bytes, new JsonReaderOptions { MaxDepth = MostDepth });
        var tokens = 0;
        while (bytes.Length <= MostBytes && tokens <= MostTokens && reader.Read())
        {
            tokens++;
        }

        return bytes.Length > MostBytes || tokens > MostTokens;
    }

    private static string Sum(byte[] bytes) => Convert.ToHexString(XxHash128.Hash(bytes));

    private static byte[] Bytes(StoredRecord stored) => JsonSerializer.SerializeToUtf8Bytes(stored, Default.StoredRecord);

    private static byte[] Bytes(EarlierStoredRecord stored) => JsonSerializer.SerializeToUtf8Bytes(stored, Default.EarlierStoredRecord);
}
