using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace PaperFlock.Pdf.Tests;

public sealed class PdfAttachmentTests
{
    private const int Limit = 1 << 20;

    private static readonly PdfAttachment Record = new("issue.json", "application/json", "The record of this issue", Encoding.UTF8.GetBytes("""{"issue":1,"ŵyn":["Sorrel"]}"""));

    private static readonly byte[] Pdf = Sample.Print(Sample.Everything() with { Attachment = Record });

    [Fact]
    public void An_attachment_is_found_by_name()
    {
        Assert.Equal(Record.Bytes.ToArray(), Found(Pdf, "issue.json"));
        Assert.Equal(PdfAttachmentOutcome.Missing, PdfAttachments.Read(Pdf, "ISSUE.json", Limit).Outcome);
        Assert.Equal(PdfAttachmentOutcome.Missing, PdfAttachments.Read(Sample.Print(Sample.Everything()), "issue.json", Limit).Outcome);
    }

    /// <summary>PdfPig. ISO 32000-1, 7.11.3 and 7.11.4; /AF and /AFRelationship from ISO 32000-2, 14.13 (from memory).</summary>
    [Fact]
    public void Another_reader_finds_them_too_and_what_they_are()
    {
        using var pdf = PdfDocument.Open(Pdf);
        Assert.True(pdf.Advanced.TryGetEmbeddedFiles(out var files));
        Assert.Equal(Record.Bytes.ToArray(), Assert.Single(files, file => file.Name == "issue.json").Bytes.ToArray());
        var associated = Assert.Single(Assert.IsType<ArrayToken>(pdf.InCatalog("AF")).Data);
        Assert.Equal("issue.json", pdf.Find(associated, "UF").Text());
        Assert.Equal("The record of this issue", pdf.Find(associated, "Desc").Text());
        Assert.Equal("Data", pdf.Find(associated, "AFRelationship").Name());
        Assert.Equal("application/json", pdf.Find(associated, "EF", "F", "Subtype").Name());
    }

    [Fact]
    public void A_name_may_hold_any_letter()
    {
        var odd = Sample.Print(Sample.Everything() with { Attachment = Record with { Name = "a (b) ŵ.txt" } });
        Assert.Equal(Record.Bytes.ToArray(), Found(odd, "a (b) ŵ.txt"));
        Assert.Equal(PdfAttachmentOutcome.Missing, PdfAttachments.Read(odd, "a (b) w.txt", Limit).Outcome);
    }

    /// <summary>Shorter, longer, the same, and nothing at all.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(30)]
    [InlineData(70000)]
    public void Another_in_its_place_gives_the_bytes_that_printing_it_would_have_given(int length)
    {
        var bytes = new byte[length];
        new Random(7).NextBytes(bytes);
        var printed = Sample.Print(Sample.Everything() with { Attachment = Record with { Bytes = bytes } });
        Assert.Equal(printed, PdfAttachments.Replace(Pdf, "issue.json", bytes));
        Assert.Equal(Pdf, PdfAttachments.Replace(printed, "issue.json", Record.Bytes.Span));
    }

    [Fact]
    public void Nothing_is_put_into_a_file_that_is_not_as_it_was_written()
    {
        Assert.Null(PdfAttachments.Replace(Sample.Print(Sample.Everything()), "issue.json", "{}"u8));
        Assert.Null(PdfAttachments.Replace(Pdf.AsMemory(0, Pdf.Length - 1), "issue.json", "{}"u8));
        var random = new Random(3);
        var attached = Pdf.AsSpan().IndexOf("/EmbeddedFile"u8) - 30;
        var refused = 0;
        for (var i = 0; i < 2000; i++)
        {
            var spoilt = Pdf.ToArray();
            spoilt[i % 2 == 0 ? random.Next(spoilt.Length) : attached + random.Next(120)] ^= (byte)random.Next(1, 256);
            refused += PdfAttachments.Replace(spoilt, "issue.json", "{}"u8) is null ? 1 : 0;
        }

        Assert.InRange(refused, 200, 1999);
    }

    [Fact]
    public void The_title_of_one_of_ours_can_be_read()
    {
        Assert.Equal("A <b> & ŵ", PdfAttachments.TitleOf(Sample.Print(Sample.Everything() with { Title = "A <b> & ŵ" })));
        Assert.Null(PdfAttachments.TitleOf("%PDF-1.7\n%%EOF\n"u8));
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
        var attached = Pdf.AsSpan().IndexOf("/EmbeddedFile"u8) - 30;
        for (var i = 0; i < 3000; i++)
        {
            var spoilt = Pdf.ToArray();
            var at = i % 2 == 0 ? random.Next(spoilt.Length) : attached + random.Next(200);
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
        var bomb = Sample.Print(Sample.Document(Sample.Page()) with { Attachment = Record with { Bytes = new byte[64 << 20] } });
        Assert.InRange(bomb.Length, 1, 1 << 20);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(PdfAttachmentOutcome.TooLarge, PdfAttachments.Read(bomb, "issue.json", Limit).Outcome);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 8 << 20);
    }

    [Fact]
    public void A_file_larger_than_any_of_ours_is_not_looked_at() =>
        Assert.Equal(PdfAttachmentOutcome.TooLarge, PdfAttachments.Read(new byte[PdfAttachments.MostBytes + 1], "issue.json", Limit).Outcome);

    [Theory]
    [InlineData("<</Length 9999999999/Type/EmbeddedFile/Params<</Size 5>>>>\nstream\n")]
    [InlineData("<</Length -1/Type/EmbeddedFile/Params<</Size 5>>>>\nstream\n")]
    [InlineData("<</Length 9/Type/EmbeddedFile/Params<</Size 5>>>>")]
    [InlineData("<</Length 9/Type/EmbeddedFile>>\nstream\n")]
    [InlineData("")]
    public void A_forged_attachment_is_damage(string stream)
    {
        var forged = $"%PDF-1.7\n/Producer(PaperFlock)\n<</Type/Filespec/F (issue.json)/UF (issue.json)/EF<</F 7 0 R>>>>\n7 0 obj\n{stream}";
        forged += $"9 0 obj\n<</Length 0>>\nstartxref\n{forged.Length}\n%%EOF\n";
        Assert.Equal(PdfAttachmentOutcome.Damaged, PdfAttachments.Read(Encoding.Latin1.GetBytes(forged), "issue.json", Limit).Outcome);
    }

    private static byte[] Found(byte[] pdf, string name)
    {
        var reading = PdfAttachments.Read(pdf, name, Limit);
        Assert.Equal(PdfAttachmentOutcome.Found, reading.Outcome);
        return reading.Bytes.ToArray();
    }
}
