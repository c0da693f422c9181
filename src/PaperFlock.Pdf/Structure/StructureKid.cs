namespace PaperFlock.Pdf.Structure;

/// <summary>What is in a structure element, in the order it is read out (ISO 32000-1, 14.7.4).</summary>
internal abstract record StructureKid
{
    private StructureKid()
    {
    }

    public sealed record Nested(StructureElement Inner) : StructureKid;

    /// <summary>Something painted.</summary>
    /// <param name="Page">0-based.</param>
    /// <param name="Number">Of the marked content on its page.</param>
    public sealed record Content(int Page, int Number) : StructureKid;

    /// <summary>The area of a link.</summary>
    /// <param name="Index">Of the document's links.</param>
    public sealed record Annotation(int Index) : StructureKid;
}
