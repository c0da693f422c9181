using System.Text;
using System.Text.RegularExpressions;
using CsCheck;
using NodaTime;
using NodaTime.Text;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Flocks.Tests;

/// <summary>The sample files, and small files made from parts.</summary>
internal static partial class Samples
{
    public const string Holding =
        """
        holding:
          name: Hollin Bank
          location: {latitude: 54.46, longitude: -2.74}
          time-zone: Europe/London

        """;

    public const string Season =
        """
        season:
          tup-in: 2026-08-10

        """;

    public const string Ewes =
        """
        ewes:
          - tag: ZZ 0123456 00101

        """;

    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "flocks");

    public static IEnumerable<string> Good => ["hollin-bank", "kanuka-flat", "smallest"];

    public static IEnumerable<string> Bad =>
        Directory.GetFiles(Path.Combine(Folder, "bad"), "*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal);

    /// <summary>One of a few, each as likely.</summary>
    public static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    public static byte[] Bytes(string name) => File.ReadAllBytes(Path.Combine(Folder, $"{name}.yaml"));

    /// <summary>As of the day the file names among its first lines; of no day where it names none.</summary>
    public static FlockReading Read(string name) => Read(name, Bytes(name));

    /// <inheritdoc cref="Read(string)"/>
    public static FlockReading Read(string name, byte[] bytes)
    {
        var named = AsOf().Match(Encoding.UTF8.GetString(bytes.AsSpan(0, Math.Min(bytes.Length, 1000))));
        return FlockReader.Read($"{name}.yaml", bytes, named.Success ? Today(named.Groups[1].Value) : null);
    }

    public static string Text(string extra = "", string holding = Holding, string season = Season, string ewes = Ewes) =>
        $"paperflock: 1\n{holding}{season}{extra}{ewes}";

    /// <param name="asOf">Such as <c>2026-11-25</c>; null for no day.</param>
    public static FlockReading ReadText(string text, string? asOf = null) =>
        FlockReader.Read("flock.yaml", Encoding.UTF8.GetBytes(text), asOf is null ? null : Today(asOf));

    private static Func<DateTimeZone, LocalDate> Today(string day) => _ => LocalDatePattern.Iso.Parse(day).Value;

    /// <summary>The flock of a text that must be right, warnings aside.</summary>
    public static Flock Flock(string text)
    {
        var reading = ReadText(text);
        Assert.Empty(DiagnosticRenderer.Render(reading.Source, [.. reading.Diagnostics.Where(d => d.Severity == Severity.Error)]));
        return reading.Flock!;
    }

    public static string[] Codes(string text, string? asOf = null) => [.. ReadText(text, asOf).Diagnostics.Select(d => d.Code)];

    /// <summary>One ewe with these lines, in a file that is right otherwise.</summary>
    public static string Ewe(params string[] lines) =>
        Text(ewes: Ewes + string.Concat(lines.Select(l => $"    {l}\n")));

    [GeneratedRegex("^# as of ([0-9-]{10})\r?$", RegexOptions.Multiline)]
    private static partial Regex AsOf();
}
