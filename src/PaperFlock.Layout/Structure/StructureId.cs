namespace PaperFlock.Layout.Structure;

/// <summary>Shared by the pieces of one tagged element that stands in several places: a table over three pages is one table. Told apart by reference.</summary>
public sealed class StructureId;
