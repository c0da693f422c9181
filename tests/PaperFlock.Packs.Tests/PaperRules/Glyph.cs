using PaperFlock.Layout;
using PaperFlock.Sheets.Tests.PaperRules;

namespace PaperFlock.Packs.Tests.PaperRules;

/// <summary>A character as the outline in the embedded font draws it.</summary>
/// <param name="Run">Which of the page's texts it belongs to, from 0.</param>
/// <param name="Style">Face by the font's own name, size in points after all scaling.</param>
/// <param name="Box">Round its outline; empty for a space.</param>
internal sealed record Glyph(string Character, int Run, TextStyle Style, Area Box)
{
    public bool IsBlank => string.IsNullOrWhiteSpace(Character);
}
