namespace PaperFlock.Pdf.Writing;

/// <summary>An object of a file, by its number (ISO 32000-1, 7.3.10).</summary>
internal readonly record struct Reference(int Number);
