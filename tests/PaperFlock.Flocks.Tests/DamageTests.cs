using CsCheck;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Reading;

namespace PaperFlock.Flocks.Tests;

/// <summary>Files are typed by tired people on borrowed computers: whatever comes, the reader answers and never throws.</summary>
public class DamageTests
{
    private static readonly byte[][] Files = [.. Samples.Good.Concat(Samples.Bad.Select(b => $"bad/{b}")).Select(Samples.Bytes)];

    private static readonly byte[] Marks = "\n\r\t :-#[]{}\"'&*!|>%@`,?~0"u8.ToArray();

    /// <summary>One slip: where, what kind, and with which byte.</summary>
    private static readonly Gen<(double At, int Kind, byte Byte)> Slip = Gen.Select(
        Gen.Double[0, 1], Gen.Int[0, 4], Gen.OneOf(Gen.Byte, Samples.OneOf(Marks)));

    [Fact]
    public void Damaged_bytes_never_throw() =>
        Gen.Select(Samples.OneOf(Files), Slip.Array[1, 6]).Sample((file, slips) => Check(slips.Aggregate(file, Damage)), iter: 6000);

    [Fact]
    public void Lines_in_another_order_never_throw() =>
        Gen.Select(Samples.OneOf(Files), Gen.Int[0, int.MaxValue]).Sample(
            (file, seed) =>
            {
                var lines = System.Text.Encoding.UTF8.GetString(file).Split('\n');
                new Random(seed).Shuffle(lines);
                Check(System.Text.Encoding.UTF8.GetBytes(string.Join('\n', lines.Take(40))));
            },
            iter: 1500);

    /// <summary>Found by the fuzzing command: a value whose end the parser puts before its start.</summary>
    [Theory]
    [InlineData("3a09210a3a0d302060265d2225303a2722236040305d2a3a")]
    public void What_fuzzing_found_does_not_throw(string hex) => Check(Convert.FromHexString(hex));

    [Fact]
    public void Noise_never_throws() =>
        Gen.OneOf(Gen.Byte.Array[0, 60], Samples.OneOf(Marks).Array[0, 60]).Sample(Check, iter: 3000);

    private static byte[] Damage(byte[] file, (double At, int Kind, byte Byte) slip)
    {
        var at = (int)(slip.At * file.Length);
        var span = file.AsSpan();
        return slip.Kind switch
        {
            _ when at >= file.Length => [.. file, slip.Byte],
            0 => [.. span[..at], slip.Byte, .. span[(at + 1)..]],
            1 => [.. span[..at], slip.Byte, .. span[at..]],
            2 => [.. span[..at], .. span[(at + 1)..]],
            3 => [.. span[..at]],
            _ => [.. span[..at], .. span[(at / 2)..]],
        };
    }

    private static void Check(byte[] bytes)
    {
        var reading = FlockReader.Read("flock.yaml", bytes);
        Assert.Equal(reading.Flock is null, reading.Diagnostics.Any(d => d.Severity == Severity.Error));
        Assert.NotNull(DiagnosticRenderer.Render(reading.Source, reading.Diagnostics));
        Assert.All(reading.Diagnostics, d =>
        {
            Assert.DoesNotContain('\n', d.Message + d.Advice);
            Assert.True(d.Span.IsWholeFile || d.Span.Line <= reading.Source.LineCount);
        });
    }
}
