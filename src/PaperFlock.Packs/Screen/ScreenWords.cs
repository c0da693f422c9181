namespace PaperFlock.Packs.Screen;

/// <summary>
/// The command line's messages where somebody reads them on a screen: what is to be typed there is a button here. All that differs stands in this one table.
/// </summary>
public static class ScreenWords
{
    private static readonly (string Typed, string OnScreen)[] Differing =
    [
        (": a whole one, without --changed, is the better choice", ": make the whole pack instead, as the next issue"),
        (": type --changed instead", ": make the changed sheets instead"),
        (": give the PDF of that issue, such as --since FILE.pdf", ": choose the PDF of that issue"),
        (", and nothing was written", ""),
        (": nothing was written", ""),
    ];

    public static string Of(string message) => Differing.Aggregate(message, (words, each) => words.Replace(each.Typed, each.OnScreen, StringComparison.Ordinal));
}
