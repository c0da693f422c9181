using System.Collections.Immutable;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using PaperFlock.Languages;

namespace PaperFlock.Words;

/// <summary>What one call says; both null for a call of something else.</summary>
internal sealed partial record CallReading(SaidWords? Said, string? Problem)
{
    private static readonly CallReading Nothing = new(null, null);

    public static CallReading Of(InvocationExpressionSyntax call, string path)
    {
        if (call.Expression is not MemberAccessExpressionSyntax { Name.Identifier.Text: var name })
        {
            return Nothing;
        }

        var arguments = call.ArgumentList.Arguments.Select(a => a.Expression).ToArray();
        return (name, arguments) switch
        {
            ("Say", [var words]) => Single(call, path, null, words),
            ("SayAs", [var context, var words]) => TextOf(context) is { } plain ? Single(call, path, plain.Template, words) : NotText(call, path),
            ("Plural", [_, var one, var many]) => Plural(call, path, one, many),
            ("Count" or "CountLoose", [_, .., var one, var many]) when arguments.Length is 3 or 4 => Counted(call, path, one, many),
            ("Say" or "SayAs" or "Plural", _) => new CallReading(null, $"{At(call, path)}: {name} with {arguments.Length} arguments"),
            _ => Nothing,
        };
    }

    private static CallReading Single(InvocationExpressionSyntax call, string path, string? context, ExpressionSyntax words) => TextOf(words) is { } text
        ? new CallReading(new SaidWords(context, text.Template, null, Notes(call, text), [path]), null)
        : NotText(call, path);

    private static CallReading Plural(InvocationExpressionSyntax call, string path, ExpressionSyntax one, ExpressionSyntax many)
    {
        if (TextOf(one) is not { } singular || TextOf(many) is not { } plural)
        {
            return NotText(call, path);
        }

        return singular.Holes.SequenceEqual(plural.Holes)
            ? new CallReading(new SaidWords(null, singular.Template, plural.Template, Notes(call, plural), [path]), null)
            : new CallReading(null, $"{At(call, path)}: both forms must have the same holes in the same order");
    }

    private static CallReading Counted(InvocationExpressionSyntax call, string path, ExpressionSyntax one, ExpressionSyntax many)
    {
        if (TextOf(one) is not { Holes.IsEmpty: true } singular || TextOf(many) is not { Holes.IsEmpty: true } plural)
        {
            return NotText(call, path);
        }

        var said = new SaidWords(null, $"{{0}}\u00a0{singular.Template}", $"{{0}}\u00a0{plural.Template}", [], [path]);
        return new CallReading(said with { Notes = Notes(call, new Text(said.One, ["a number"])) }, null);
    }

    private static CallReading NotText(InvocationExpressionSyntax call, string path) =>
        new(null, $"{At(call, path)}: the words must be written out in the call: {call.ToString().ReplaceLineEndings(" ")}");

    private static string At(InvocationExpressionSyntax call, string path) =>
        $"{path}:{call.GetLocation().GetLineSpan().StartLinePosition.Line + 1}";

    /// <returns>Null for anything but a text, such as a variable or a sum of texts.</returns>
    private static Text? TextOf(ExpressionSyntax expression)
    {
        var template = new StringBuilder();
        switch (expression)
        {
            case LiteralExpressionSyntax literal when literal.IsKind(SyntaxKind.StringLiteralExpression):
                // Without holes a text is looked up as it is.
                return new Text(literal.Token.ValueText, []);
            case InterpolatedStringExpressionSyntax interpolated:
                var holes = ImmutableArray.CreateBuilder<string>();
                foreach (var part in interpolated.Contents)
                {
                    if (part is InterpolationSyntax hole)
                    {
                        Template.AppendHole(template, holes.Count);
                        holes.Add(Spaces().Replace(hole.Expression.ToString(), " "));
                    }
                    else
                    {
                        // A brace stands doubled there, as it was typed.
                        var text = ((InterpolatedStringTextSyntax)part).TextToken.ValueText;
                        Template.AppendText(template, text.Replace("{{", "{", StringComparison.Ordinal).Replace("}}", "}", StringComparison.Ordinal));
                    }
                }

                return new Text(template.ToString(), holes.ToImmutable());
            default:
                return null;
        }
    }

    /// <summary>What the author wrote for the translator above the call or what holds it, and what each hole is.</summary>
    private static ImmutableArray<string> Notes(InvocationExpressionSyntax call, Text text) =>
    [
        .. call.AncestorsAndSelf()
            .SelectMany(node => node.GetLeadingTrivia())
            .Select(trivia => trivia.ToString())
            .Where(comment => comment.StartsWith(ForTheTranslator, StringComparison.Ordinal))
            .Select(comment => Sentence(comment[ForTheTranslator.Length..].Trim()))
            .Distinct(StringComparer.Ordinal),
        .. text.Template.Contains('\u00a0', StringComparison.Ordinal) ? ["It has a no-break space, which keeps what stands beside it on one line."] : Array.Empty<string>(),
        .. text.Holes.Select((hole, i) => $"{{{i}}}: {hole.Replace("stationery.", "", StringComparison.Ordinal).Replace("Language.", "", StringComparison.Ordinal)}"),
    ];

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private const string ForTheTranslator = "// For the translator:";

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    private readonly record struct Text(string Template, ImmutableArray<string> Holes);
}
