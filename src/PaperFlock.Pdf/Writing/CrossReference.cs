using System.Buffers.Binary;

namespace PaperFlock.Pdf.Writing;

/// <summary>Where an object of a file is (ISO 32000-1, 7.5.8.3).</summary>
/// <param name="Type">1 for an object by itself, 2 for one that is compressed with others; 0 while it is not written.</param>
/// <param name="Where">The byte it begins at, or the number of the object stream it is in.</param>
/// <param name="Index">Its place in that stream.</param>
internal readonly record struct CrossReference(byte Type, uint Where, ushort Index)
{
    /// <summary>Bytes of each of the three.</summary>
    public const string Widths = "[1 4 2]";

    public const int Length = 7;

    /// <summary>The entry of number 0, which is no object.</summary>
    public static readonly CrossReference None = new(0, 0, ushort.MaxValue);

    public static CrossReference At(long place) => new(1, checked((uint)place), 0);

    public static CrossReference Packed(Reference pack, int index) => new(2, (uint)pack.Number, checked((ushort)index));

    /// <summary>One entry after another.</summary>
    public static byte[] Table(IReadOnlyList<CrossReference> entries)
    {
        var table = new byte[Length * entries.Count];
        for (var i = 0; i < entries.Count; i++)
        {
            var row = table.AsSpan(Length * i, Length);
            row[0] = entries[i].Type;
            BinaryPrimitives.WriteUInt32BigEndian(row[1..], entries[i].Where);
            BinaryPrimitives.WriteUInt16BigEndian(row[5..], entries[i].Index);
        }

        return table;
    }
}
