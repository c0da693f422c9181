using System.Collections.Immutable;
using PaperFlock.Diagnostics;

namespace PaperFlock.Languages.Po;

/// <summary>What every translated entry must keep to, so that no page can come out without a figure.</summary>
internal static class EntryRules
{
    public static void Check(ImmutableArray<PoEntry> entries, PluralRule plurals, DiagnosticBag found)
    {
        var lines = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var entry in entries)
        {
            if (!lines.TryAdd(entry.Key, entry.Id.Span.Line))
            {
                found.Add(PoMessages.SaidTwice(entry.Id.Span, lines[entry.Key]));
            }

            if (!entry.IsTranslated)
            {
                continue;
            }

            var forms = entry.Plural is null ? 1 : plurals.Forms;
            if (entry.Said.Length != forms)
            {
                found.Add(PoMessages.WrongForms(entry.Said[^1].Span, forms, entry.Said.Length));
            }

            foreach (var said in entry.Said)
            {
                Holes(entry, said, found);
            }
        }
    }

    private static void Holes(PoEntry entry, PoText said, DiagnosticBag found)
    {
        if (Template.HolesOf(said.Words) is not { } holes)
        {
            found.Add(PoMessages.BadBraces(said.Span));
            return;
        }

        // An id that is broken itself is none of the translator's making, and is found by its holes being others.
        var wanted = Template.HolesOf(entry.Id.Words) ?? [];
        if (!holes.SequenceEqual(wanted))
        {
            found.Add(PoMessages.WrongHoles(said.Span, Listed(wanted), Listed(holes)));
        }
    }

    private static string Listed(ImmutableArray<int> holes) => holes.IsEmpty ? "none" : string.Join(" ", holes.Select(h => $"{{{h}}}"));
}
