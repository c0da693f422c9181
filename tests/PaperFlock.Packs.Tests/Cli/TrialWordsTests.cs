using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

/// <summary>A translator sees his own words on paper.</summary>
public sealed class TrialWordsTests
{
    private const string Header = "msgid \"\"\nmsgstr \"\"\n\"Language: cy\\n\"\n\"Plural-Forms: nplurals=2; plural=(n != 1);\\n\"\n\n";
    private const string Entry = "msgid \"Cautions\"\nmsgstr \"RHYBUDDION\"\n";

    [Fact]
    public void A_pack_is_printed_in_the_words_of_the_catalogue_beside_the_english_one()
    {
        using var bench = new Workbench();
        bench.Write("smallest.yaml", Samples.TwoEwes);
        bench.Write("cy.po", Header + Entry);
        Assert.Equal(ExitStatus.Clean, bench.Run("pack", "smallest.yaml", "--as-of", "2026-08-01").Status);
        var english = File.ReadAllBytes(bench.PathOf("smallest.pdf"));
        var outcome = bench.Run("pack", "smallest.yaml", "--as-of", "2026-08-01", "--words", "cy.po");
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        Assert.Contains("texts are not translated, and are printed in English", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(english, File.ReadAllBytes(bench.PathOf("smallest.pdf")));
        Assert.Contains("smallest.cy.issues.txt", bench.Everything());
        using var pdf = new PackPdf(bench.PathOf("smallest.cy.pdf"));
        Assert.Contains(pdf.Texts, t => t.Contains("RHYBUDDION", StringComparison.Ordinal));
        Assert.All(pdf.Texts, t => Assert.Contains("TRIAL TRANSLATION", t, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_mistake_in_the_catalogue_is_shown_and_nothing_is_written()
    {
        using var bench = new Workbench();
        bench.Write("smallest.yaml", Samples.TwoEwes);
        bench.Write("cy.po", Header + "msgid \"{0} of {1}\"\nmsgstr \"{0}\"\n\nmsgid \"Ewes\"\nmsgstr \"{\"\n");
        var before = bench.Everything();
        foreach (var command in new[] { "pack smallest.yaml --words cy.po", "guide --words cy.po", "testpage --words cy.po" })
        {
            var outcome = bench.Run(command.Split(' '));
            Assert.Equal(ExitStatus.FlockErrors, outcome.Status);
            Assert.Contains("cy.po:7:8: error WRD009: the holes are {0}, and should be {0} {1}", outcome.Error, StringComparison.Ordinal);
            Assert.Contains("cy.po:10:8: error WRD010", outcome.Error, StringComparison.Ordinal);
            Assert.Equal(before, bench.Everything());
        }
    }

    [Fact]
    public void A_catalogue_that_is_not_there_is_wrong_use()
    {
        using var bench = new Workbench();
        bench.Write("smallest.yaml", Samples.TwoEwes);
        var outcome = bench.Run("pack", "smallest.yaml", "--words", "cy.po");
        Assert.Equal(ExitStatus.WrongUse, outcome.Status);
        Assert.Contains("cy.po", outcome.Error, StringComparison.Ordinal);
    }

    /// <summary>A page, a leaf and a pack, each with words that no room can be found for.</summary>
    [Theory]
    [InlineData("testpage --words cy.po", "Printer test page", "TEST")]
    [InlineData("guide --words cy.po", "what it is for", "GUIDE")]
    [InlineData("pack smallest.yaml --as-of 2026-08-01 --words cy.po", "what is done, and on which day", "WALL")]
    [InlineData("pack smallest.yaml other.yaml --as-of 2026-08-01 --words cy.po", "what is done, and on which day", "WALL")]
    public void Words_too_long_for_a_sheet_are_the_translators_mistake_and_nothing_is_written(string command, string english, string sheet)
    {
        using var bench = new Workbench();
        bench.Write("smallest.yaml", Samples.TwoEwes);
        bench.Write("other.yaml", Samples.TwoEwes.Replace("name: ", "name: Other ", StringComparison.Ordinal));
        bench.Write("cy.po", Header + $"msgid \"{english}\"\nmsgstr \"{english} {string.Concat(Enumerable.Repeat("hir ", 3000))}\"\n");
        var before = bench.Everything();
        var outcome = bench.Run(command.Split(' '));
        Assert.Equal(ExitStatus.FlockErrors, outcome.Status);
        Assert.Contains($"cy.po: the words are too long for their place on {sheet}, where the English ones fit: ", outcome.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("fault of the program", outcome.Error, StringComparison.Ordinal);
        Assert.Equal(before, bench.Everything());
    }

    [Fact]
    public void A_character_that_no_face_has_is_shown_at_its_place()
    {
        using var bench = new Workbench();
        bench.Write("cy.po", Header + "msgid \"Cautions\"\nmsgstr \"注意\"\n");
        var outcome = bench.Run("guide", "--words", "cy.po");
        Assert.True(outcome.Status == ExitStatus.Clean, outcome.Error);
        Assert.Contains("cy.po:7:8: warning WRD020", outcome.Error, StringComparison.Ordinal);
        Assert.Contains("how-to-use-this-pack.cy.pdf", bench.Everything());
    }
}
