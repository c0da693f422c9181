using System.Text;

namespace PaperFlock.Layout.Tests;

public sealed class FingerprintTests
{
    // FNV-1a, 128 bits: the offset basis is the hash of nothing; the others are from the FNV test vectors of Fowler, Noll and Vo, from memory.
    [Theory]
    [InlineData("", "6C62272E07BB014262B821756295C58D")]
    [InlineData("a", "D228CB696F1A8CAF78912B704E4A8964")]
    [InlineData("foobar", "343E1662793C64BF6F0D3597BA446F18")]
    public void Hashes_match_the_published_ones(string text, string hash)
        => Assert.Equal(hash, Fingerprint.Of(Encoding.ASCII.GetBytes(text)));

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(6)]
    public void Bytes_in_two_goes_have_the_hash_of_all_of_them(int first)
    {
        var bytes = "foobar"u8;
        var running = new Fingerprint();
        running.Add(bytes[..first]);
        running.Add(bytes[first..]);
        Assert.Equal(Fingerprint.Of(bytes), running.ToString());
    }
}
