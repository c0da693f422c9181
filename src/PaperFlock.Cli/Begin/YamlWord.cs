namespace PaperFlock.Cli.Begin;

/// <summary>Text as a YAML value, quoted where it would be read as anything but itself.</summary>
internal static class YamlWord
{
    public static string Of(string text) => IsPlain(text) ? text : $"'{text.Replace("'", "''", StringComparison.Ordinal)}'";

    private static bool IsPlain(string text) =>
        text.Length > 0
        && !"-?:,[]{}#&*!|>'\"%@`".Contains(text[0], StringComparison.Ordinal)
        && !text.Contains(": ", StringComparison.Ordinal)
        && !text.Contains(" #", StringComparison.Ordinal)
        && !text.EndsWith(':');
}
