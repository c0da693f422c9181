using System.Text;
using CsCheck;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Flocks.Tests;

/// <summary>The sample files, and small files made from parts.</summary>
internal static class Samples
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

    public static FlockReading Read(string name) => FlockReader.Read($"{name}.yaml", Bytes(name));

    public static string Text(string extra = "", string holding = Holding, string season = Season, string ewes = Ewes) =>
        $"paperflock: 1\n{holding}{season}{extra}{ewes}";

    public static FlockReading ReadText(string text) => FlockReader.Read("flock.yaml", Encoding.UTF8.GetBytes(text));

    /// <summary>The flock of a text that must be right, warnings aside.</summary>
    public static Flock Flock(string text)
    {
        var reading = ReadText(text);
        Assert.Empty(DiagnosticRenderer.Render(reading.Source, [.. reading.Diagnostics.Where(d => d.Severity == Severity.Error)]));
        return reading.Flock!;
    }

    public static string[] Codes(string text) => [.. ReadText(text).Diagnostics.Select(d => d.Code)];

    /// <summary>One ewe with these lines, in a file that is right otherwise.</summary>
    public static string Ewe(params string[] lines) =>
        Text(ewes: Ewes + string.Concat(lines.Select(l => $"    {l}\n")));
}
