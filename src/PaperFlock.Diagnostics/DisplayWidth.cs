using System.Text;

namespace PaperFlock.Diagnostics;

/// <summary>Columns that text takes on a terminal: 0, 1 or 2 for a character.</summary>
public static class DisplayWidth
{
    /// <summary>The blocks of Unicode Standard Annex 11 that are wide or full-width throughout. From memory, coarse: a block, not each character.</summary>
    private static readonly (int First, int Last)[] Wide =
    [
        (0x1100, 0x115F), (0x2E80, 0x303E), (0x3041, 0x33FF), (0x3400, 0x4DBF), (0x4E00, 0x9FFF), (0xA000, 0xA4CF),
        (0xAC00, 0xD7A3), (0xF900, 0xFAFF), (0xFE30, 0xFE6F), (0xFF01, 0xFF60), (0xFFE0, 0xFFE6),
        (0x1F300, 0x1F64F), (0x1F680, 0x1F6FF), (0x1F900, 0x1F9FF), (0x20000, 0x3FFFD),
    ];

    public static int Of(string text) => text.EnumerateRunes().Sum(Of);

    public static int Of(Rune rune) => Rune.GetUnicodeCategory(rune) switch
    {
        UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark => 0,
        // Drawn as one replacement mark, but for those beyond the first plane, which are left as nothing.
        UnicodeCategory.Format => rune.IsBmp ? 1 : 0,
        _ => IsWide(rune.Value) ? 2 : 1,
    };

    /// <summary>Control characters, line and paragraph separators, and format characters: what turns the direction of writing, and what nobody can see.</summary>
    public static bool IsUnprintable(char c) => char.IsControl(c) || c is '\u2028' or '\u2029' || char.GetUnicodeCategory(c) == UnicodeCategory.Format;

    private static bool IsWide(int value) => Wide.Any(block => block.First <= value && value <= block.Last);
}
