using System.Text;
using CsCheck;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Reading.Yaml;

namespace PaperFlock.Flocks.Tests;

/// <summary>Every diagnostic stands on a span, so spans are held to the text itself.</summary>
public class SpanTests
{
    private static readonly Gen<string> Words = Gen.String[Gen.Char["abcxyz0189é羊"], 1, 8];

    private static readonly Gen<string> Tokens = Gen.OneOf(
        Words,
        Gen.Select(Words, Words, (a, b) => $"{a} {b}"),
        Gen.Select(Words, Words, (a, b) => $"\"{a}, {b}: #\""),
        Gen.Select(Words, Words, (a, b) => $"'{a}'' {b}'"));

    private static readonly Gen<string> Values = Gen.OneOf(
        Tokens,
        Tokens.Array[0, 4].Select(items => $"[{string.Join(", ", items)}]"),
        Tokens.Array[0, 4].Select(items => $"{{{string.Join(", ", items.Select((t, i) => $"k{i}: {t}"))}}}"),
        Tokens.Array[1, 4].Select(items => string.Concat(items.Select(t => $"\n  - {t}"))),
        Tokens.Array[1, 4].Select(items => string.Concat(items.Select((t, i) => $"\n  k{i}:   {t}  # note"))));

    private static readonly Gen<string> Documents =
        Gen.Select(Values.Array[1, 6], Samples.OneOf("\n", "\r\n", "\r"), (values, ending) =>
            string.Concat(values.Select((v, i) => $"key{i}: {v}\n\n")).ReplaceLineEndings(ending));

    [Fact]
    public void The_text_under_a_span_is_the_token() => Documents.Sample(text => Check(new SourceText("f", text)), iter: 3000);

    [Fact]
    public void So_it_is_in_the_samples()
    {
        foreach (var name in Samples.Good)
        {
            Check(new SourceText(name, Encoding.UTF8.GetString(Samples.Bytes(name))));
        }
    }

    private static void Check(SourceText source)
    {
        var bag = new DiagnosticBag();
        var root = TreeBuilder.Build(source, bag);
        Assert.Empty(bag.ToSorted());
        foreach (var scalar in Scalars(root!))
        {
            var token = source.TextOf(scalar.Span);
            var meant = scalar.IsPlain ? token : token[0] == '"' ? token[1..^1] : token[1..^1].Replace("''", "'", StringComparison.Ordinal);
            Assert.Equal(scalar.Text, meant);
        }
    }

    private static IEnumerable<Scalar> Scalars(Node node) => node switch
    {
        Scalar { IsBlank: false } scalar => [scalar],
        Sequence sequence => sequence.Items.SelectMany(Scalars),
        Mapping mapping => mapping.Entries.SelectMany(e => Scalars(e.Key).Concat(Scalars(e.Value))),
        _ => [],
    };
}
