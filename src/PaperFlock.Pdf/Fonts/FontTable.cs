using System.Buffers.Binary;

namespace PaperFlock.Pdf.Fonts;

/// <summary>One table of a font file. Its numbers stand high byte first.</summary>
/// <param name="font">What to call the font in a message.</param>
/// <param name="name">Four characters, such as "hmtx".</param>
internal readonly struct FontTable(string font, string name, ReadOnlyMemory<byte> bytes)
{
    public ReadOnlyMemory<byte> Bytes => bytes;

    public ushort UInt16(int at) => BinaryPrimitives.ReadUInt16BigEndian(Part(at, 2).Span);

    public short Int16(int at) => BinaryPrimitives.ReadInt16BigEndian(Part(at, 2).Span);

    /// <summary>A place or a length: larger than a font may be is damage.</summary>
    public int Offset(int at) => BinaryPrimitives.ReadUInt32BigEndian(Part(at, 4).Span) is var offset and <= int.MaxValue ? (int)offset : throw Damaged();

    public uint UInt32(int at) => BinaryPrimitives.ReadUInt32BigEndian(Part(at, 4).Span);

    /// <exception cref="InvalidDataException">The table ends before that.</exception>
    public ReadOnlyMemory<byte> Part(int start, int length) =>
        start >= 0 && length >= 0 && start <= bytes.Length - length ? bytes.Slice(start, length) : throw Damaged();

    /// <summary>A part of the table to be read by itself.</summary>
    public FontTable With(ReadOnlyMemory<byte> part) => new(font, name, part);

    public InvalidDataException Damaged() => new($"the font {font} is damaged: its table {name} does not hold what it should");
}
