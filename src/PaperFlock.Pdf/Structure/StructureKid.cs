namespace PaperFlock.Pdf.Structure;

/// <summary>What is in a structure element, in the order it is read out (ISO 32000-1, 14.7.4): another element, or one of these.</summary>
internal abstract class StructureKid
{
    /// <summary>Something painted.</summary>
    /// <param name="page">0-based.</param>
    /// <param name="number">Of the marked content on its page.</param>
    public sealed class Content(int page, int number) : StructureKid
    {
        public int Page => page;

        public int Number => number;
    }

    /// <summary>The area of a link.</summary>
    /// <param name="index">Of the document's links.</param>
    public sealed class Annotation(int index) : StructureKid
    {
        public int Index => index;
    }
}
