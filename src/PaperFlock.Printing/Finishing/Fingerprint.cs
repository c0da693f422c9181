namespace PaperFlock.Printing.Finishing;

/// <summary>FNV-1a, 128 bits wide: tells one file from another (ISO 32000-1, 14.4 asks for no more), and needs no cryptography of the computer it runs on.</summary>
public static class Fingerprint
{
    private static readonly UInt128 Basis = new(0x6C62272E07BB0142, 0x62B821756295C58D);
    private static readonly UInt128 Prime = new(0x0000000001000000, 0x000000000000013B);

    /// <returns>32 hexadecimal digits.</returns>
    public static string Of(ReadOnlySpan<byte> bytes)
    {
        var hash = Basis;
        foreach (var value in bytes)
        {
            hash = unchecked((hash ^ value) * Prime);
        }

        return hash.ToString("X32", System.Globalization.CultureInfo.InvariantCulture);
    }
}
