namespace PaperFlock.Languages.Tests;

/// <summary>Rules from the table of the GNU gettext manual, "Additional functions for plural forms".</summary>
public sealed class PluralRuleTests
{
    [Theory]
    [InlineData("nplurals=1; plural=0;", "0 0 0 0 0")]
    [InlineData("nplurals=2; plural=n != 1;", "1 0 1 1 1")]
    [InlineData("nplurals=2; plural=n>1;", "0 0 1 1 1")]
    [InlineData("nplurals=3; plural=n%10==1 && n%100!=11 ? 0 : n != 0 ? 1 : 2;", "2 0 1 1 0")]
    [InlineData("nplurals=3; plural=n==1 ? 0 : n==2 ? 1 : 2;", "2 0 1 2 2")]
    [InlineData("nplurals=3; plural=(n==1) ? 0 : (n==0 || (n%100 > 0 && n%100 < 20)) ? 1 : 2;", "1 0 1 1 2")]
    [InlineData("nplurals = 2 ; plural = !(n == 1)", "1 0 1 1 1")]
    public void A_published_rule_gives_its_forms_for_0_1_2_11_and_21(string rule, string forms)
    {
        var read = PluralRule.Read(rule);
        Assert.NotNull(read);
        Assert.Equal(forms, string.Join(' ', new[] { 0, 1, 2, 11, 21 }.Select(read.FormOf)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("nplurals=2;")]
    [InlineData("plural=n != 1;")]
    [InlineData("nplurals=INTEGER; plural=EXPRESSION;")]
    [InlineData("nplurals=2; plural=n;")]
    [InlineData("nplurals=2; plural=n/0;")]
    [InlineData("nplurals=2; plural=(n != 1;")]
    [InlineData("nplurals=2; plural=n != 1) ;")]
    [InlineData("nplurals=0; plural=0;")]
    [InlineData("nplurals=2; plural=m != 1;")]
    public void What_is_no_rule_is_refused(string rule) => Assert.Null(PluralRule.Read(rule));

    [Fact]
    public void Brackets_without_end_are_refused() => Assert.Null(PluralRule.Read($"nplurals=2; plural={new string('(', 10_000)}n"));
}
