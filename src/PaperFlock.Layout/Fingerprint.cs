namespace PaperFlock.Layout;

/// <summary>
/// FNV-1a, 128 bits wide: tells one thing from another and guards nothing. It needs no cryptography of the computer it runs on: on Linux that is
/// OpenSSL, and where it is missing the framework's hashes end the program.
/// </summary>
public struct Fingerprint()
{
    private static readonly UInt128 Prime = new(0x0000000001000000, 0x000000000000013B);
    private UInt128 _hash = new(0x6C62272E07BB0142, 0x62B821756295C58D);

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
        var hash = _hash;
        foreach (var value in bytes)
        {
            hash = unchecked((hash ^ value) * Prime);
        }

        _hash = hash;
    }

    /// <returns>32 hexadecimal digits, of what has been added so far.</returns>
    public override readonly string ToString() => _hash.ToString("X32", System.Globalization.CultureInfo.InvariantCulture);
}
