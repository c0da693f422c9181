using System.Collections.Immutable;
using PaperFlock.Sheets.Theme;

namespace PaperFlock.Sheets;

/// <summary>Draws the sheets of one kind. To add a kind, write one of these and give it its place in <see cref="PackComposer"/>.</summary>
internal interface ISheetMaker
{
    /// <summary>The word <c>--sheets</c> knows it by.</summary>
    string Kind { get; }

    /// <returns>Empty when the flock gives the sheet nothing to say.</returns>
    ImmutableArray<Sheet> Make(SheetContext context);
}
