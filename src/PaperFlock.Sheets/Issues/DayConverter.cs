using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime.Text;

namespace PaperFlock.Sheets.Issues;

/// <summary>A day as ISO 8601 writes it.</summary>
internal sealed class DayConverter : JsonConverter<LocalDate>
{
    public override LocalDate Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        LocalDatePattern.Iso.Parse(reader.GetString() ?? string.Empty) is { Success: true } parsed ? parsed.Value : throw new JsonException("not a day");

    public override void Write(Utf8JsonWriter writer, LocalDate value, JsonSerializerOptions options) => writer.WriteStringValue(LocalDatePattern.Iso.Format(value));
}
