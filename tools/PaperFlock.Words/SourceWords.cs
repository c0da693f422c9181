using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace PaperFlock.Words;

/// <summary>Words for print, found in the sources where they are said: calls of <c>Say</c>, <c>SayAs</c>, <c>Plural</c>, <c>Count</c> and <c>CountLoose</c>.</summary>
/// <param name="Said">In the order of the files and of the calls in them, each text once.</param>
/// <param name="Problems">What no translator could reach, each with its file and line.</param>
public sealed record SourceWords(ImmutableArray<SaidWords> Said, ImmutableArray<string> Problems)
{
    /// <summary>What is looked up there is its own business: it is handed texts that were found elsewhere.</summary>
    private const string TheLanguageItself = "src/PaperFlock.Languages/Language.cs";

    /// <param name="root">Folder of the repository.</param>
    public static SourceWords In(string root)
    {
        var files = Directory.EnumerateFiles(Path.Combine(root, "src"), "*.cs", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(root, f).Replace('\\', '/'))
            .Where(f => !f.Contains("/obj/", StringComparison.Ordinal) && !f.Contains("/bin/", StringComparison.Ordinal) && f != TheLanguageItself)
            .Order(StringComparer.Ordinal);
        return Of(files.Select(f => (f, File.ReadAllText(Path.Combine(root, f)))));
    }

    /// <param name="files">Paths as they are to be shown, and texts.</param>
    public static SourceWords Of(IEnumerable<(string Path, string Text)> files)
    {
        var problems = ImmutableArray.CreateBuilder<string>();
        var said = new List<SaidWords>();
        foreach (var (path, text) in files)
        {
            var root = CSharpSyntaxTree.ParseText(text, CSharpParseOptions.Default.WithLanguageVersion(LanguageVersion.Latest), path).GetRoot();
            foreach (var call in root.DescendantNodes().OfType<InvocationExpressionSyntax>())
            {
                var reading = CallReading.Of(call, path);
                if (reading.Problem is { } problem)
                {
                    problems.Add(problem);
                }

                if (reading.Said is { } words)
                {
                    said.Add(words);
                }
            }
        }

        var merged = said.GroupBy(w => w.Key, StringComparer.Ordinal).Select(same => Merged([.. same], problems));
        return new SourceWords([.. merged], problems.ToImmutable());
    }

    private static SaidWords Merged(ImmutableArray<SaidWords> same, ImmutableArray<string>.Builder problems)
    {
        if (same.Select(w => w.Many).Distinct(StringComparer.Ordinal).Count() > 1)
        {
            problems.Add($"{same[0].Places[0]}: \"{same[0].One}\" is said with different plurals, or with and without one, in {string.Join(", ", same.Select(w => w.Places[0]).Distinct())}");
        }

        return same[0] with
        {
            Notes = [.. same.SelectMany(w => w.Notes).Distinct(StringComparer.Ordinal)],
            Places = [.. same.SelectMany(w => w.Places).Distinct(StringComparer.Ordinal)],
        };
    }
}
