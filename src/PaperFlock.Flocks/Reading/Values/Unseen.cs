namespace PaperFlock.Flocks.Reading.Values;

/// <summary>Characters that leave nothing on the paper: two names or tags could differ by one and look the same.</summary>
internal static class Unseen
{
    /// <summary>Both ends included. Unicode Character Database, DerivedCoreProperties.txt, Default_Ignorable_Code_Point.</summary>
    private static readonly (int First, int Last)[] Ignorable =
    [
        (0x00AD, 0x00AD), (0x034F, 0x034F), (0x061C, 0x061C), (0x115F, 0x1160), (0x17B4, 0x17B5), (0x180B, 0x180F), (0x200B, 0x200F), (0x202A, 0x202E),
        (0x2060, 0x206F), (0x3164, 0x3164), (0xFE00, 0xFE0F), (0xFEFF, 0xFEFF), (0xFFA0, 0xFFA0), (0xFFF0, 0xFFF8), (0x1BCA0, 0x1BCA3), (0x1D173, 0x1D17A),
        (0xE0000, 0xE0FFF),
    ];

    /// <summary>The pattern of braille with no dot raised: a space that no program takes for one.</summary>
    private const int BlankBraille = 0x2800;

    public static bool Is(Rune rune) =>
        rune.Value == BlankBraille
        || Rune.GetUnicodeCategory(rune) == UnicodeCategory.Format
        || (rune.Value > 0x7F && Ignorable.Any(block => block.First <= rune.Value && rune.Value <= block.Last));
}
