using System.Text.RegularExpressions;

namespace PaperFlock.Cli.Entering.Sheets;

/// <summary>Lambs for the flock book as they are typed behind a lambing, each after a semicolon: <c>; ewe ZZ 0123456 10001 4.1 kg; ram</c>.</summary>
internal static partial class TypedLambs
{
    private static readonly string[] Sexes = ["ewe", "ram", "wether"];

    /// <returns>The list as the flock file writes it and as it is read back, or else why not.</returns>
    public static (FlockValue? Value, string? Words, string? WhyNot) Read(IEnumerable<string> lambs)
    {
        var (values, words) = (new List<FlockValue>(), new List<string>());
        foreach (var typed in lambs)
        {
            if (Lamb().Match(typed) is not { Success: true } match || Sexes.FirstOrDefault(s => s.StartsWith(match.Groups["sex"].Value, StringComparison.OrdinalIgnoreCase)) is not { } sex)
            {
                return (null, null, $"`{typed}` is no lamb; type ewe, ram or wether, then its tag and its weight if it has them, such as `ewe 10001 4.1 kg`");
            }

            var last = match.Groups["tag"].Value.Split(' ')[^1];
            if (!match.Groups["number"].Success && Fraction().IsMatch(last))
            {
                return (null, null, $"`{last}` has no unit; a weight is typed with kg or lb, such as `{last} kg`");
            }

            if (Sexes.Contains(last, StringComparer.OrdinalIgnoreCase))
            {
                return (null, null, $"`{typed}` has two lambs in it; a semicolon comes before each, such as `; {sex}; {last}`");
            }

            var (tag, weight) = (match.Groups["tag"].Value.Trim(), match.Groups["number"].Success ? $"{match.Groups["number"].Value.Replace(',', '.')} {match.Groups["unit"].Value.ToLowerInvariant()}" : "");
            values.Add(FlockValue.Section(
            [
                .. tag.Length > 0 ? [("tag", FlockValue.Text(tag))] : Array.Empty<(string, FlockValue)>(),
                ("sex", FlockValue.Word(sex)),
                .. weight.Length > 0 ? [("weight", FlockValue.Word(weight))] : Array.Empty<(string, FlockValue)>(),
            ]));
            words.Add(string.Join(' ', new[] { sex, "lamb", tag, weight }.Where(w => w.Length > 0)));
        }

        return (FlockValue.List(values), string.Join(", ", words), null);
    }

    [GeneratedRegex("^(?<sex>[a-z]+)(?:\\s+(?<tag>.*?))?(?:\\s+(?<number>[0-9]+(?:[.,][0-9]+)?)\\s*(?<unit>kg|lb))?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Lamb();

    [GeneratedRegex("^[0-9]+[.,][0-9]+$", RegexOptions.CultureInvariant)]
    private static partial Regex Fraction();
}
