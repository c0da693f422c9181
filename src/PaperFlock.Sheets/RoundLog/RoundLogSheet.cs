namespace PaperFlock.Sheets.RoundLog;

/// <summary>On the clipboard: when to go, where to count, what was given and what was found. Two sides to a leaf, which is coded by its first day.</summary>
internal static class RoundLogSheet
{
    public static readonly SheetDefinition Definition = new("log", "LOG", SheetUse.Clipboard)
    {
        Lives = "clipboard",
        Purpose = "each round: when it should be, when it was, heads at every place, what was fed, what was found",
        IsForSitter = true,
        Together = "Round log",
        Make = context => new RoundLogMaker(context).Make(),
    };
}
