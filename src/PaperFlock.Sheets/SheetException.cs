namespace PaperFlock.Sheets;

/// <summary>Something does not fit its sheet even on an empty page.</summary>
/// <param name="sheet">Page code of the sheet.</param>
/// <param name="reason">What, where, how much room it needs and how much there is.</param>
public sealed class SheetException(string sheet, string reason, Exception cause) : Exception($"{sheet}: {reason}", cause);
