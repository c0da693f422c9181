using System.Text.Json;

namespace PaperFlock.Packs.Figures;

/// <summary>Words other programs compare with, and calendars know jobs by; never changed.</summary>
internal static class Codes
{
    /// <summary>The name in small letters, its words joined by hyphens: <c>teeth-toes-teats</c>.</summary>
    public static string Of<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString());
}
