using System.Collections.Immutable;
using System.Text;
using PaperFlock.Cli.Files;
using PaperFlock.Cli.Wiring;
using PaperFlock.Diagnostics;
using PaperFlock.Languages;
using PaperFlock.Languages.Po;
using PaperFlock.Layout;

namespace PaperFlock.Cli.Translating;

/// <summary>The language asked for on the command line: a translator's catalogue, tried on a pack.</summary>
internal static class TrialLanguage
{
    /// <summary>A character of the catalogue that will be missing from the paper.</summary>
    public const string MissingCharacter = "WRD020";

    private const string TemplateName = "paperflock.pot";

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads the catalogue, and tells the user what was noticed.</summary>
    /// <param name="path">As typed; null for English.</param>
    /// <returns>Null when the catalogue has errors.</returns>
    /// <exception cref="UsageException">It cannot be read.</exception>
    public static Language? Read(string? path, Surroundings surroundings, ILine line)
    {
        if (path is null)
        {
            return Language.English;
        }

        var catalogue = Catalogue.Read(path, TextOf(path, surroundings));
        ImmutableArray<Diagnostic> found = [.. catalogue.Diagnostics, .. MissingCharacters(catalogue, line)];
        DiagnosticsOut.Write(catalogue.Source, found, surroundings);
        if (catalogue.Language is not { } language)
        {
            return null;
        }

        var template = Template();
        if (catalogue.MissingOf(template) is > 0 and var missing)
        {
            surroundings.Error.WriteLine(Words.NotTranslated(path, missing, template.Entries.Length));
        }

        return language;
    }

    /// <summary>What follows a name of what is written in that language.</summary>
    public static string Suffix(Language language) => language.IsEnglish ? "" : $".{language.Tag}";

    private static string TextOf(string path, Surroundings surroundings)
    {
        try
        {
            return Utf8.GetString(FlockBytes.Read(path, surroundings));
        }
        catch (DecoderFallbackException e)
        {
            throw new UsageException(Words.CannotRead(path, Words.NotUtf8), e);
        }
    }

    private static IEnumerable<Diagnostic> MissingCharacters(Catalogue catalogue, ILine line) => catalogue.Entries
        .Where(e => e.IsTranslated)
        .SelectMany(e => e.Said)
        .Select(said => (said.Span, Missing: line.FirstMissing(said.Words.Replace('\n', ' '), Face.Text) ?? line.FirstMissing(said.Words.Replace('\n', ' '), Face.Mono)))
        .Where(s => s.Missing is not null)
        .Select(s => new Diagnostic(Severity.Warning, MissingCharacter, s.Span, Words.NoSuchCharacter(s.Missing!), Words.NoSuchCharacterAdvice));

    /// <summary>What there is to translate, as this program was built.</summary>
    private static Catalogue Template()
    {
        using var stream = typeof(TrialLanguage).Assembly.GetManifestResourceStream(TemplateName)
            ?? throw new InvalidOperationException("the list of all words was not built in");
        using var reader = new StreamReader(stream, Utf8);
        return Catalogue.Read(TemplateName, reader.ReadToEnd());
    }
}
