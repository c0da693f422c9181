using System.IO.Compression;
using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace PaperFlock.Pdf.Tests;

public sealed class PdfAttachmentTests
{
    private const int Limit = 1 << 20;

    private static readonly PdfAttachment Record = new("issue.json", "application/json", "The record of this issue", Encoding.UTF8.GetBytes("""{"issue":1,"ŵyn":["Sorrel"]}"""));

    private static readonly PdfAttachment Other = new("a (b).txt", "text/plain", "Another, ŵ", "plain"u8.ToArray());

    private static readonly byte[] Pdf = Sample.Print(Sample.Everything() with { Attachments = [Record, Other] });

    [Fact]
    public void An_attachment_is_found_by_name()
    {
        Assert.Equal(Record.Bytes.ToArray(), Found(Pdf, "issue.json"));
        Assert.Equal("plain"u8.ToArray(), Found(Pdf, "a (b).txt"));
        Assert.Equal(PdfAttachmentOutcome.Missing, PdfAttachments.Read(Pdf, "ISSUE.json", Limit).Outcome);
        Assert.Equal(PdfAttachmentOutcome.Missing, PdfAttachments.Read(Sample.Print(Sample.Everything()), "issue.json", Limit).Outcome);
    }

    /// <summary>PdfPig. ISO 32000-1, 7.11.3 and 7.11.4; /AF and /AFRelationship from ISO 32000-2, 14.13 (from memory).</summary>
    [Fact]
    public void Another_reader_finds_them_too_and_what_they_are()
    {
        using var pdf = PdfDocument.Open(Pdf);
        Assert.True(pdf.Advanced.TryGetEmbeddedFiles(out var files));
        Assert.Equal(["a (b).txt", "issue.json"], files.Select(file => file.Name).Order(StringComparer.Ordinal));
        Assert.Equal(Record.Bytes.ToArray(), files.Single(file => file.Name == "issue.json").Bytes.ToArray());
        var associated = Assert.IsType<ArrayToken>(pdf.InCatalog("AF")).Data;
        Assert.Equal(["issue.json", "a (b).txt"], associated.Select(file => pdf.Find(file, "UF").Text()));
        Assert.Equal(["The record of this issue", "Another, ŵ"], associated.Select(file => pdf.Find(file, "Desc").Text()));
        Assert.All(associated, file => Assert.Equal("Data", pdf.Find(file, "AFRelationship").Name()));
        Assert.Equal("application/json", pdf.Find(associated[0], "EF", "F", "Subtype").Name());
    }

    [Fact]
    public void An_attachment_is_replaced_and_every_byte_before_it_stays()
    {
        var once = PdfAttachments.Replace(Pdf, "issue.json", "second"u8)!;
        var twice = PdfAttachments.Replace(once, "issue.json", "third, and longer"u8)!;
        Assert.Equal(Pdf, once[..Pdf.Length]);
        Assert.Equal(once, twice[..once.Length]);
        Assert.Equal("second"u8.ToArray(), Found(once, "issue.json"));
        Assert.Equal("third, and longer"u8.ToArray(), Found(twice, "issue.json"));
        Assert.Equal("plain"u8.ToArray(), Found(twice, "a (b).txt"));
        Assert.Equal(twice, PdfAttachments.Replace(once, "issue.json", "third, and longer"u8));
        Assert.InRange(twice.Length - once.Length, 1, 1000);

        using var pdf = PdfDocument.Open(twice);
        Assert.Equal(2, pdf.NumberOfPages);
        Assert.True(pdf.Advanced.TryGetEmbeddedFiles(out var files));
        Assert.Equal("third, and longer"u8.ToArray(), files.Single(file => file.Name == "issue.json").Bytes.ToArray());
    }

    [Fact]
    public void What_is_not_there_is_not_replaced()
    {
        Assert.Null(PdfAttachments.Replace(Pdf, "nothing", "new"u8));
        Assert.Null(PdfAttachments.Replace("not a PDF"u8.ToArray(), "issue.json", "new"u8));
    }

    [Theory]
    [InlineData("")]
    [InlineData("%PDF-1.7\n%%EOF\n")]
    [InlineData("GIF89a")]
    public void What_we_did_not_write_is_foreign(string text) =>
        Assert.Equal(PdfAttachmentOutcome.Foreign, PdfAttachments.Read(Encoding.Latin1.GetBytes(text), "issue.json", Limit).Outcome);

    [Fact]
    public void A_file_cut_short_anywhere_is_damaged_or_foreign()
    {
        for (var length = 0; length < Pdf.Length; length += length > Pdf.Length - 400 ? 1 : 37)
        {
            Assert.Contains(PdfAttachments.Read(Pdf.AsMemory(0, length), "issue.json", Limit).Outcome, (PdfAttachmentOutcome[])[PdfAttachmentOutcome.Damaged, PdfAttachmentOutcome.Foreign]);
        }
    }

    /// <summary>It may even be found, where the byte is one of a page; but then it is what was attached.</summary>
    [Fact]
    public void A_file_with_a_wrong_byte_is_never_misread()
    {
        var random = new Random(5);
        var damaged = 0;
        for (var i = 0; i < 3000; i++)
        {
            var spoilt = Pdf.ToArray();
            var at = i % 2 == 0 ? random.Next(spoilt.Length) : spoilt.Length - 1 - random.Next(1500);
            spoilt[at] ^= (byte)random.Next(1, 256);
            var reading = PdfAttachments.Read(spoilt, "issue.json", Limit);
            damaged += reading.Outcome == PdfAttachmentOutcome.Damaged ? 1 : 0;
            if (reading.Outcome == PdfAttachmentOutcome.Found)
            {
                Assert.Equal(Record.Bytes.ToArray(), reading.Bytes.ToArray());
            }
        }

        Assert.InRange(damaged, 300, 2999);
    }

    [Fact]
    public void A_bomb_is_not_inflated_beyond_the_limit()
    {
        var bomb = Sample.Print(Sample.Document(Sample.Page()) with { Attachments = [Record with { Bytes = new byte[64 << 20] }] });
        Assert.InRange(bomb.Length, 1, 1 << 20);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(PdfAttachmentOutcome.TooLarge, PdfAttachments.Read(bomb, "issue.json", Limit).Outcome);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 8 << 20);
    }

    [Fact]
    public void A_file_larger_than_any_of_ours_is_not_looked_at() =>
        Assert.Equal(PdfAttachmentOutcome.TooLarge, PdfAttachments.Read(new byte[PdfAttachments.MostBytes + 1], "issue.json", Limit).Outcome);

    /// <summary>Forged parts of a file: what each holds in place of its own table of where everything is.</summary>
    [Theory]
    [InlineData("/Size 3/Root 1 0 R/Info 2 0 R/ID[<00><00>]/Prev 99999999999")]
    [InlineData("/Size 99999999/Root 1 0 R/Info 2 0 R/ID[<00><00>]")]
    [InlineData("/Size -1/Root 1 0 R/Info 2 0 R/ID[<00><00>]")]
    [InlineData("/Size 3/Root 1 0 R/Info 2 0 R/ID[<00><00>]/Index[0 3 0 3 0 3 0 3]")]
    [InlineData("/Size 3/Root 1 0 R/Info 2 0 R/ID[<00><00>]/Index[-5 8]")]
    [InlineData("/Size 3/Root[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[1]")]
    [InlineData("/Size 3/Root 1 0 R/Info 2 0 R/ID()")]
    [InlineData("/Size 3/Root<</Root<</Root<<")]
    public void A_forged_table_is_damage(string entries)
    {
        var head = "%PDF-1.7\n/Producer(PaperFlock)\n"u8.ToArray();
        var table = Compressed(new byte[21]);
        byte[] forged = [.. head, .. Encoding.Latin1.GetBytes($"9 0 obj\n<</Length {table.Length}/Type/XRef/W[1 4 2]/Filter/FlateDecode{entries}>>\nstream\n"), .. table, .. Encoding.Latin1.GetBytes($"\nendstream\nendobj\nstartxref\n{head.Length}\n%%EOF\n")];
        Assert.Equal(PdfAttachmentOutcome.Damaged, PdfAttachments.Read(forged, "issue.json", Limit).Outcome);
    }

    [Fact]
    public void A_table_that_points_back_at_itself_ends()
    {
        var head = "%PDF-1.7\n/Producer(PaperFlock)\n"u8.ToArray();
        var table = Compressed(new byte[21]);
        byte[] forged = [.. head, .. Encoding.Latin1.GetBytes($"9 0 obj\n<</Length {table.Length}/Type/XRef/W[1 4 2]/Filter/FlateDecode/Size 3/Prev {head.Length}/Root 1 0 R/Info 2 0 R/ID[<00><00>]>>\nstream\n"), .. table, .. Encoding.Latin1.GetBytes($"\nendstream\nendobj\nstartxref\n{head.Length}\n%%EOF\n")];
        Assert.Equal(PdfAttachmentOutcome.Damaged, PdfAttachments.Read(forged, "issue.json", Limit).Outcome);
    }

    private static byte[] Found(byte[] pdf, string name)
    {
        var reading = PdfAttachments.Read(pdf, name, Limit);
        Assert.Equal(PdfAttachmentOutcome.Found, reading.Outcome);
        return reading.Bytes.ToArray();
    }

    private static byte[] Compressed(byte[] bytes)
    {
        using var output = new MemoryStream();
        using (var zip = new ZLibStream(output, CompressionLevel.Optimal))
        {
            zip.Write(bytes);
        }

        return output.ToArray();
    }
}
