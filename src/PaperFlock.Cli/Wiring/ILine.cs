using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Layout;
using PaperFlock.Layout.Pages;
using PaperFlock.Planning;

namespace PaperFlock.Cli.Wiring;

/// <summary>The four steps from a flock file to paper, as the commands see them. A test may break any one of them.</summary>
internal interface ILine
{
    /// <param name="shownPath">What diagnostics call the file.</param>
    Reading Read(string shownPath, byte[] bytes);

    SeasonPlan Plan(Flock flock, LocalDate asOf);

    /// <param name="sheets">From <see cref="SheetName.All"/>, in binding order; empty for all.</param>
    /// <exception cref="LayoutException">Something does not fit an empty page.</exception>
    Pack Compose(SeasonPlan plan, IReadOnlyList<SheetName> sheets);

    void Print(PackDocument document, Stream output);

    /// <returns>The page as a PNG.</returns>
    byte[] Paint(Page page, double dotsPerInch);

    /// <summary>The first character of a text that a face cannot show; null when it shows all.</summary>
    string? FirstMissing(string text, Face face);
}
