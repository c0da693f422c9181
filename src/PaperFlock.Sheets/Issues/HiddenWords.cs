using System.IO.Hashing;
using System.Text;

namespace PaperFlock.Sheets.Issues;

/// <summary>Words that a record does not hold as they are, only a fingerprint of them, by which a change still shows.</summary>
internal static class HiddenWords
{
    private const char Mark = '#';
    private const int Length = 33;

    public static string Of(string words) => IsHidden(words) ? words : Mark + Convert.ToHexString(XxHash128.Hash(Encoding.UTF8.GetBytes(words)));

    /// <summary>Whether two say the same, one of them or both hidden.</summary>
    public static bool AreSame(string one, string other) =>
        one == other || (IsHidden(one) != IsHidden(other) && Of(one) == Of(other));

    /// <summary>For a list of changes.</summary>
    public static string Shown(string words) => IsHidden(words) ? "another number" : words;

    private static bool IsHidden(string words) => words.Length == Length && words[0] == Mark;
}
