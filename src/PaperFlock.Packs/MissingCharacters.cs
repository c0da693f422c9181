using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Layout;
using PaperFlock.Pdf;

namespace PaperFlock.Packs;

/// <summary>Characters in the flock file that none of the printed faces has, each with its place in the file.</summary>
internal static class MissingCharacters
{
    /// <summary>A character of the file that will be missing from the paper.</summary>
    public const string Code = "FLK120";

    /// <returns>At most one for each text, in the order of the sections of the file.</returns>
    public static IEnumerable<Diagnostic> In(Flock flock, SourceText source)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var text in Texts(flock))
        {
            if (text.Value is not { Length: > 0 } value || !seen.Add($"{text.IsTag} {text.Near.Line} {value}"))
            {
                continue;
            }

            // A tag is set in the mono face, all other words in the text face; the bold faces have the same characters.
            if (FontLibrary.FirstMissing(value, text.IsTag ? Face.Mono : Face.Text) is { } missing)
            {
                yield return new Diagnostic(
                    Severity.Warning, Code, PlaceOf(missing, value, text.Near, source),
                    $"`{missing}` is in none of the typefaces", "the paper will show an empty box in its place: write it another way");
            }
        }
    }

    /// <summary>The character itself, where the whole text stands; a text folded over lines or escaped is pointed at by what it belongs to.</summary>
    private static SourceSpan PlaceOf(string missing, string text, SourceSpan near, SourceText source)
    {
        var at = near.IsWholeFile ? 0 : source.OffsetOf(near.Line);
        return Find(text, at) ?? Find(text, 0) ?? Find(missing, at) ?? near;

        SourceSpan? Find(string wanted, int from)
        {
            var found = source.Text.IndexOf(wanted, from, StringComparison.Ordinal);
            return found < 0 ? null : source.SpanAt(found + wanted.IndexOf(missing, StringComparison.Ordinal), missing.Length);
        }
    }

    private static IEnumerable<PrintedText> Texts(Flock flock)
    {
        var holding = flock.Holding;
        string?[] ofHolding = [holding.Name, holding.Keeper, holding.GridReference, holding.Postcode];
        return
        [
            .. ofHolding.Select(Anywhere),
            .. holding.Contacts.SelectMany(c => new[] { c.Role, c.Name, c.Phone, c.Note }).Select(Anywhere),
            .. flock.Breeds.Select(b => Anywhere(b.Name)),
            .. flock.Groups.SelectMany(g => new[] { g.Name, g.Tup }.Concat(g.Raddle).Select(t => new PrintedText(t, g.Span))),
            .. flock.KeeperDays.Away.SelectMany(a => new[] { a.Sitter, a.Phone }.Select(t => new PrintedText(t, a.Span))),
            .. flock.OwnJobs.Select(j => new PrintedText(j.Title, j.Span)),
            Anywhere(flock.Feeds.Concentrate.Name),
            Anywhere(flock.Feeds.Buckets?.Name),
            .. flock.Housing.Pens.Select(p => new PrintedText(p.Name, p.Span)),
            .. flock.Ewes.SelectMany(e => new[] { new PrintedText(e.Tag, e.Span, IsTag: true), new PrintedText(e.Name, e.Span), new PrintedText(e.Note, e.Span) }),
        ];
    }

    private static PrintedText Anywhere(string? value) => new(value, SourceSpan.WholeFile);

    /// <param name="Near">Where in the file to look from.</param>
    private readonly record struct PrintedText(string? Value, SourceSpan Near, bool IsTag = false);
}
