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

    public static CrossReference At(long place) => new(1, checked((uint)place), 0);

    public static CrossReference Packed(Reference pack, int index) => new(2, (uint)pack.Number, checked((ushort)index));

    /// <summary>Entries of the objects from number 1 on, after that of number 0, which is none.</summary>
    /// <exception cref="InvalidOperationException">One was given a number and never written.</exception>
    public static byte[] Table(IReadOnlyList<CrossReference> places)
    {
        var table = new byte[Length * (places.Count + 1)];
        BinaryPrimitives.WriteUInt16BigEndian(table.AsSpan(5), ushort.MaxValue);
        for (var i = 0; i < places.Count; i++)
        {
            var row = table.AsSpan(Length * (i + 1), Length);
            row[0] = places[i].Type is > 0 and var type ? type : throw new InvalidOperationException("an object was given a number and never written");
            BinaryPrimitives.WriteUInt32BigEndian(row[1..], places[i].Where);
            BinaryPrimitives.WriteUInt16BigEndian(row[5..], places[i].Index);
        }

        return table;
    }
}
