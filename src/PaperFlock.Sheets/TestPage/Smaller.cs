namespace PaperFlock.Sheets.TestPage;

/// <summary>Nothing on the test page flows, so words that are longer than the English ones are set smaller, down to the least type of a pack.</summary>
internal static class Smaller
{
    private static readonly double[] Sizes = [11, 10, 9, 8.5];

    public static FirstThatFits Of(Func<TextStyle, Element> element) => Than(TypeScale.Body, element);

    /// <param name="usual">Where there is room.</param>
    public static FirstThatFits Than(TextStyle usual, Func<TextStyle, Element> element) =>
        new([.. Sizes.Where(size => size < usual.Size).Prepend(usual.Size).Select(size => element(usual with { Size = size }))]);
}
