using PaperFlock.Languages.Po;

namespace PaperFlock.Languages.Tests;

/// <summary>Catalogues of a few lines.</summary>
internal static class Po
{
    public const string Plurals = "nplurals=2; plural=(n != 1);";

    public static string Header(string language = "cy", string plurals = Plurals) =>
        $"msgid \"\"\nmsgstr \"\"\n\"Language: {language}\\n\"\n\"Content-Type: text/plain; charset=UTF-8\\n\"\n\"Plural-Forms: {plurals}\\n\"\n\n";

    public static Catalogue Read(string entries, string? header = null) => Catalogue.Read("words.po", (header ?? Header()) + entries);

    public static Language Language(string entries, string? header = null)
    {
        var catalogue = Read(entries, header);
        Assert.Empty(catalogue.Diagnostics);
        return catalogue.Language!;
    }
}
