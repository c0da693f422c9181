using System.Text.Unicode;

namespace PaperFlock.Layout;

/// <summary>
/// FNV-1a, 128 bits wide: tells one thing from another and guards nothing. It needs no cryptography of the computer it runs on: on Linux that is
/// OpenSSL, and where it is missing the framework's hashes end the program.
/// </summary>
public struct Fingerprint()
{
    // The prime is 2^88 + 315.
    private const int PrimeShift = 88 - 64;
    private const ulong PrimeRest = 315;

    private const int CharactersAtOnce = 256;
    private const int MostBytesOfCharacter = 3;

    private ulong _high = 0x6C62272E07BB0142;
    private ulong _low = 0x62B821756295C58D;

    /// <returns>32 hexadecimal digits.</returns>
    public static string Of(ReadOnlySpan<byte> bytes)
    {
        var fingerprint = new Fingerprint();
        fingerprint.Add(bytes);
        return fingerprint.ToString();
    }

    /// <summary>Bytes added one after another have the fingerprint they have together.</summary>
    public void Add(ReadOnlySpan<byte> bytes)
    {
        var (high, low) = (_high, _low);
        unchecked
        {
            foreach (var value in bytes)
            {
                low ^= value;
                // In halves, since every processor multiplies those: a framework's product of 128 bits is five times as slow where it must do without the newer instructions.
                var first = (low & uint.MaxValue) * PrimeRest;
                var second = ((low >> 32) * PrimeRest) + (first >> 32);
                high = (high * PrimeRest) + (second >> 32) + (low << PrimeShift);
                low = (second << 32) | (first & uint.MaxValue);
            }
        }

        (_high, _low) = (high, low);
    }

    /// <summary>Adds text as UTF-8.</summary>
    public void Add(ReadOnlySpan<char> text)
    {
        Span<byte> bytes = stackalloc byte[CharactersAtOnce * MostBytesOfCharacter];
        while (!text.IsEmpty)
        {
            _ = Utf8.FromUtf16(text[..Math.Min(text.Length, CharactersAtOnce)], bytes, out var read, out var written, isFinalBlock: text.Length <= CharactersAtOnce);
            Add(bytes[..written]);
            text = text[read..];
        }
    }

    /// <returns>32 hexadecimal digits, of what has been added so far.</returns>
    public override readonly string ToString() => new UInt128(_high, _low).ToString("X32", System.Globalization.CultureInfo.InvariantCulture);
}
