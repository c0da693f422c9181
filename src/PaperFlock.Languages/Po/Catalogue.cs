using System.Collections.Frozen;
using System.Collections.Immutable;
using PaperFlock.Diagnostics;

namespace PaperFlock.Languages.Po;

/// <summary>A translator's work, read from a PO file.</summary>
/// <param name="Source">The file, for its diagnostics.</param>
/// <param name="Entries">In the order of the file, without the header.</param>
/// <param name="Language">Null when there are errors.</param>
/// <param name="Diagnostics">In the order of the file.</param>
public sealed record Catalogue(SourceText Source, ImmutableArray<PoEntry> Entries, Language? Language, ImmutableArray<Diagnostic> Diagnostics)
{
    /// <param name="path">As it is to be shown; never opened.</param>
    public static Catalogue Read(string path, string text)
    {
        var source = new SourceText(path, text);
        var found = new DiagnosticBag();
        var all = PoReader.Read(source, found);
        var header = all.FirstOrDefault(e => e.IsHeader);
        var (tag, plurals) = PoHeader.Read(header, all.Any(e => e.Plural is not null), found);
        ImmutableArray<PoEntry> entries = [.. all.Where(e => !e.IsHeader)];
        EntryRules.Check(entries, plurals, found);
        return new Catalogue(source, entries, found.HasErrors ? null : LanguageOf(tag, plurals, entries), found.ToSorted());
    }

    /// <summary>How many of the entries of a template have no translation here.</summary>
    public int MissingOf(Catalogue template)
    {
        var translated = Entries.Where(e => e.IsTranslated).Select(e => e.Key).ToHashSet(StringComparer.Ordinal);
        return template.Entries.Count(e => !translated.Contains(e.Key));
    }

    private static Language LanguageOf(string tag, PluralRule plurals, ImmutableArray<PoEntry> entries) => Languages.Language.Of(
        tag,
        entries.Where(e => e.IsTranslated).ToFrozenDictionary(e => e.Key, e => e.Said.Select(s => s.Words).ToImmutableArray(), StringComparer.Ordinal),
        plurals);
}
