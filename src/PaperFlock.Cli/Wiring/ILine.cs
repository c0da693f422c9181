using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Flocks.Reading;
using PaperFlock.Layout;
using PaperFlock.Layout.Pages;
using PaperFlock.Planning;
using PaperFlock.Sheets;
using PaperFlock.Sheets.Issues;

namespace PaperFlock.Cli.Wiring;

/// <summary>The four steps from a flock file to paper, as the commands see them. A test may break any one of them.</summary>
internal interface ILine
{
    /// <param name="shownPath">What diagnostics call the file.</param>
    FlockReading Read(string shownPath, byte[] bytes);

    SeasonPlan Plan(Flock flock, LocalDate asOf);

    /// <param name="record">What has been printed of the pack; null for nothing.</param>
    /// <exception cref="SheetException">Something does not fit an empty page.</exception>
    Issue Compose(SeasonPlan plan, PackRequest request, IssueRecord? record);

    PackDocument TestPage(Paper paper);

    PackDocument Guide(Paper paper);

    /// <returns>The PDF.</returns>
    ReadOnlyMemory<byte> Print(PackDocument document);

    /// <returns>The page as a PNG.</returns>
    byte[] Paint(Page page, double dotsPerInch);

    /// <summary>The first character of a text that a face cannot show; null when it shows all.</summary>
    string? FirstMissing(string text, Face face);
}
