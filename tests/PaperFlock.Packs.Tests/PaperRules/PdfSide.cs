using PaperFlock.Sheets.Tests.PaperRules;

namespace PaperFlock.Packs.Tests.PaperRules;

/// <summary>A page of the finished PDF beside what was meant.</summary>
/// <param name="Label">What the PDF calls the page.</param>
internal sealed record PdfSide(SideInPack Side, ReadPage Page, string Label);

/// <summary>Something that must hold of a page of the file itself, beyond the ink the paper rules look at.</summary>
/// <param name="Name">What must hold.</param>
/// <param name="Source">Where it comes from.</param>
/// <param name="Broken">What breaks it, each in words; nothing where it holds.</param>
internal sealed record PdfRule(string Name, string Source, Func<PdfSide, IEnumerable<string>> Broken)
{
    public override string ToString() => Name;
}
