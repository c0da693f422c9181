using PaperFlock.Languages;
using PaperFlock.Languages.Po;
using PaperFlock.Words;

namespace PaperFlock.Sheets.Tests.Translated;

/// <summary>The sample packs in the language that no word can hide in.</summary>
internal static class PseudoPack
{
    private static readonly Catalogue Catalogue = Made();

    public static Language Language => Catalogue.Language!;

    /// <summary>All it can say, with numbered holes.</summary>
    public static IEnumerable<string> Texts => Pairs.Select(p => p.Said);

    /// <summary>Every text and its English.</summary>
    public static IEnumerable<(string English, string Said)> Pairs =>
        Catalogue.Entries.SelectMany(e => new[] { e.Id.Words, e.Plural?.Words }.OfType<string>().Zip(e.Said, (english, said) => (english, said.Words)));

    public static Composed HollinBank => Sample("hollin-bank", Composed.HollinBankDay);

    public static Composed KanukaFlat => Sample("kanuka-flat", Composed.KanukaFlatDay);

    private static Composed Sample(string name, NodaTime.LocalDate asOf) => Composed.Of(Composed.SampleText(name), asOf, Language);

    private static Catalogue Made()
    {
        var template = Catalogue.Read("paperflock.pot", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "words", "paperflock.pot")));
        var said = template.Entries.Select(e => new SaidWords(e.Context, e.Id.Words, e.Plural?.Words, [], []));
        var catalogue = Catalogue.Read("pseudo.po", Pseudo.CatalogueOf([.. said]));
        Assert.Empty(catalogue.Diagnostics);
        return catalogue;
    }
}
