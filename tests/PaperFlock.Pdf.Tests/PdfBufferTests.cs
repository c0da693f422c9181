using System.Text;
using PaperFlock.Pdf.Writing;

namespace PaperFlock.Pdf.Tests;

/// <summary>Numbers and strings as ISO 32000-1, 7.3, has them (from memory).</summary>
public sealed class PdfBufferTests
{
    [Theory]
    [InlineData(0, "0")]
    [InlineData(-0.0004, "0")]
    [InlineData(12, "12")]
    [InlineData(0.5, "0.5")]
    [InlineData(-0.25, "-0.25")]
    [InlineData(595.276, "595.276")]
    [InlineData(841.8898, "841.89")]
    [InlineData(0.0006, "0.001")]
    [InlineData(9.9996, "10")]
    [InlineData(1.05, "1.05")]
    [InlineData(-123456.007, "-123456.007")]
    public void A_number_is_as_short_as_it_can_be_written(double value, string written) => Assert.Equal(written, Written(buffer => buffer.Add(value)));

    [Theory]
    [InlineData(0.04, "0")]
    [InlineData(-12.05, "-12.1")]
    [InlineData(99.96, "100")]
    public void A_drawing_has_tenths(double value, string written) => Assert.Equal(written, Written(buffer => buffer.AddTenths(value)));

    [Fact]
    public void A_number_is_right_to_half_a_thousandth()
    {
        var random = new Random(RandomCases.First);
        for (var i = 0; i < 100_000; i++)
        {
            var value = (random.NextDouble() - 0.5) * Math.Pow(10, random.Next(-4, 7));
            var written = Written(buffer => buffer.Add(value));
            // No exponent, which a PDF cannot have.
            Assert.Matches("^-?[0-9]+(\\.[0-9]{0,2}[1-9])?$", written);
            Assert.Equal(value, double.Parse(written, CultureInfo.InvariantCulture), 0.000501);
        }
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e10)]
    public void What_is_no_place_on_paper_is_our_bug(double value) => Assert.Throws<ArgumentOutOfRangeException>(() => new PdfBuffer().Add(value));

    [Fact]
    public void Text_between_numbers_and_references_stands_as_it_is()
        => Assert.Equal("<</Kid 12 0 R/At[1.5 -2]/Name Ab>>", Written(buffer => buffer.Add($"<</Kid {new Reference(12)}/At[{1.5} {-2}]/Name {"Ab"}>>")));

    [Theory]
    [InlineData(0x0041, "\0A")]
    [InlineData(0x0028, "\0\\(")]
    [InlineData(0x2929, "\\)\\)")]
    [InlineData(0x5C0A, "\\\\\n")]
    [InlineData(0x0D0D, "\\r\\r")]
    public void A_code_is_two_bytes_and_no_byte_of_it_ends_the_string(int code, string written) => Assert.Equal(written, Written(buffer => buffer.AddCode((ushort)code)));

    [Theory]
    [InlineData("Hollin Bank", "(Hollin Bank)")]
    [InlineData("a (b) \\c", "(a \\(b\\) \\\\c)")]
    [InlineData("ŵ", "<FEFF0175>")]
    [InlineData("a\nb", "<FEFF0061000A0062>")]
    public void Words_for_a_reader_are_plain_where_they_can_be(string text, string written) => Assert.Equal(written, Written(buffer => buffer.AddText(text)));

    private static string Written(Action<PdfBuffer> write)
    {
        var buffer = new PdfBuffer();
        write(buffer);
        return Encoding.Latin1.GetString(buffer.Written);
    }
}
