using System.Buffers.Binary;

namespace PaperFlock.Pdf.Fonts;

/// <summary>
/// A font file with the outlines of some glyphs only, for a PDF (ISO 32000-1, 9.9): glyphs keep their numbers, the others have no outline.
/// Letters that were made come after the font's own, where one is used.
/// Characters, names and positioning are left out, as a PDF says those itself.
/// </summary>
internal static class FontSubset
{
    private const int EntryLength = 16;

    // The sum over a whole font file with its own place empty, by the OpenType specification, table head.
    private const uint WholeSum = 0xB1B0AFBA;
    private const int SumPlace = 8;
    private const int LongPlaces = 50;

    // Tables hhea and maxp of the same.
    private const int WidthsPlace = 34;
    private const int CountPlace = 4;
    private const int PointsPlace = 6;
    private const int CompoundPointsPlace = 10;
    private const int PartsPlace = 28;

    public static byte[] Of(FontFile font, IEnumerable<ushort> used)
    {
        // Glyph 0 is the box for what is missing, and is in every font.
        var (kept, pending) = (new HashSet<int> { 0 }, new Queue<int>([0, .. used]));
        while (pending.TryDequeue(out var glyph))
        {
            kept.Add(glyph);
            foreach (var part in font.Glyphs.PartsOf(glyph).Where(part => !kept.Contains(part)))
            {
                pending.Enqueue(part);
            }
        }

        var count = Math.Max(font.Glyphs.Own, kept.Max() + 1);
        var (glyf, loca) = (new MemoryStream(), new byte[4 * (count + 1)]);
        for (var glyph = 0; glyph < count; glyph++)
        {
            if (kept.Contains(glyph))
            {
                glyf.Write(font.Glyphs.Of(glyph).Span);
                Pad(glyf);
            }

            BinaryPrimitives.WriteInt32BigEndian(loca.AsSpan(4 * (glyph + 1)), (int)glyf.Length);
        }

        var head = font.Table("head").Bytes.ToArray();
        BinaryPrimitives.WriteUInt32BigEndian(head.AsSpan(SumPlace), 0);
        BinaryPrimitives.WriteInt16BigEndian(head.AsSpan(LongPlaces), 1);
        var hhea = font.Table("hhea").Bytes.ToArray();
        if (count > font.Glyphs.Own)
        {
            BinaryPrimitives.WriteUInt16BigEndian(hhea.AsSpan(WidthsPlace), (ushort)count);
        }

        // By name, as the directory must be.
        return Assemble(
        [
            ("glyf", glyf.ToArray()),
            ("head", head),
            ("hhea", hhea),
            ("hmtx", count > font.Glyphs.Own ? Widths(font, count) : font.Table("hmtx").Bytes.ToArray()),
            ("loca", loca),
            ("maxp", Limits(font, count)),
        ]);
    }

    /// <summary>Advance and left edge of every glyph, as the list ends with the font's own.</summary>
    private static byte[] Widths(FontFile font, int count)
    {
        var widths = new byte[4 * count];
        for (var glyph = 0; glyph < count; glyph++)
        {
            BinaryPrimitives.WriteUInt16BigEndian(widths.AsSpan(4 * glyph), font.AdvanceOf((ushort)glyph));
            BinaryPrimitives.WriteInt16BigEndian(widths.AsSpan((4 * glyph) + 2), (short)font.Glyphs.BoxOf(glyph).Left);
        }

        return widths;
    }

    /// <summary>How many glyphs there are, and how much room a reader needs for one: a letter that was made may have another within it, and so has its points and more.</summary>
    private static byte[] Limits(FontFile font, int count)
    {
        var limits = font.Table("maxp").Bytes.ToArray();
        if (count > font.Glyphs.Own)
        {
            Write(CountPlace, count);
            Write(CompoundPointsPlace, 3 * Math.Max(Read(PointsPlace), Read(CompoundPointsPlace)));
            Write(CompoundPointsPlace + 2, 3 * Math.Max(Read(PointsPlace + 2), Read(CompoundPointsPlace + 2)));
            Write(PartsPlace, Math.Max(2, Read(PartsPlace)));
            Write(PartsPlace + 2, Read(PartsPlace + 2) + 2);
        }

        return limits;

        int Read(int at) => BinaryPrimitives.ReadUInt16BigEndian(limits.AsSpan(at));

        void Write(int at, int value) => BinaryPrimitives.WriteUInt16BigEndian(limits.AsSpan(at), (ushort)Math.Min(value, ushort.MaxValue));
    }

    private static byte[] Assemble((string Name, byte[] Bytes)[] tables)
    {
        var largestPower = 1 << (31 - int.LeadingZeroCount(tables.Length));
        var directory = new byte[12 + (EntryLength * tables.Length)];
        BinaryPrimitives.WriteUInt32BigEndian(directory, 0x00010000);
        BinaryPrimitives.WriteUInt16BigEndian(directory.AsSpan(4), (ushort)tables.Length);
        BinaryPrimitives.WriteUInt16BigEndian(directory.AsSpan(6), (ushort)(EntryLength * largestPower));
        BinaryPrimitives.WriteUInt16BigEndian(directory.AsSpan(8), (ushort)int.Log2(largestPower));
        BinaryPrimitives.WriteUInt16BigEndian(directory.AsSpan(10), (ushort)(EntryLength * (tables.Length - largestPower)));

        var file = new MemoryStream();
        file.Write(directory);
        var head = 0;
        for (var i = 0; i < tables.Length; i++)
        {
            var (name, bytes) = tables[i];
            var entry = directory.AsSpan(12 + (EntryLength * i), EntryLength);
            Encoding.ASCII.GetBytes(name).CopyTo(entry);
            BinaryPrimitives.WriteUInt32BigEndian(entry[4..], Sum(bytes));
            BinaryPrimitives.WriteInt32BigEndian(entry[8..], (int)file.Length);
            BinaryPrimitives.WriteInt32BigEndian(entry[12..], bytes.Length);
            head = name == "head" ? (int)file.Length : head;
            file.Write(bytes);
            Pad(file);
        }

        var whole = file.ToArray();
        directory.CopyTo(whole, 0);
        BinaryPrimitives.WriteUInt32BigEndian(whole.AsSpan(head + SumPlace), unchecked(WholeSum - Sum(whole)));
        return whole;
    }

    /// <summary>Of its words of four bytes, as if it were filled up with zeros.</summary>
    private static uint Sum(ReadOnlySpan<byte> bytes)
    {
        uint sum = 0;
        for (var i = 0; i < bytes.Length; i++)
        {
            sum = unchecked(sum + ((uint)bytes[i] << (8 * (3 - (i % 4)))));
        }

        return sum;
    }

    private static void Pad(MemoryStream stream) => stream.Write(new byte[(4 - (int)(stream.Length % 4)) % 4]);
}
