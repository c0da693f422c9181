using System.Xml;
using PaperFlock.Pdf.Painting;
using PaperFlock.Pdf.Structure;

namespace PaperFlock.Pdf;

/// <summary>What PDF/UA-1 (ISO 14289-1) asks of a document, as far as a program can tell.</summary>
internal static class Conformance
{
    private const string Document = "document";

    /// <param name="painted">All its pages.</param>
    /// <returns>All that is wrong; nothing for a document that may say it is PDF/UA-1.</returns>
    public static ImmutableArray<PdfFault> FaultsOf(PrintDocument document, ContentCanvas painted) =>
    [
        .. OfDocument(document).Select(problem => new PdfFault(Document, problem)),
        .. painted.Faults.Concat(OfLinks(painted.Links)).Concat(StructureRules.FaultsOf(painted.Tree)).Select(fault => new PdfFault(document.Pages[fault.Page].Label, fault.Problem)),
    ];

    // 7.1, 7.2 and 7.11.
    private static IEnumerable<string> OfDocument(PrintDocument document)
    {
        if (string.IsNullOrWhiteSpace(document.Title))
        {
            yield return "it has no title";
        }
        else if (!document.Title.All(XmlConvert.IsXmlChar) || document.Author?.All(XmlConvert.IsXmlChar) == false)
        {
            yield return "its title or author has a character that XML cannot hold";
        }

        if (string.IsNullOrWhiteSpace(document.Language))
        {
            yield return "it does not say which language it is in";
        }

        if (document.Attachment is { } file && (string.IsNullOrWhiteSpace(file.Name) || string.IsNullOrWhiteSpace(file.MediaType) || string.IsNullOrWhiteSpace(file.Description)))
        {
            yield return $"the attachment “{file.Name}” does not say what it is";
        }
    }

    // 7.18.5.
    private static IEnumerable<(int Page, string Problem)> OfLinks(Links links)
    {
        foreach (var link in links.Areas)
        {
            if (links.Find(link.Target) is null)
            {
                yield return (link.Page, $"a link leads to “{link.Target}”, which is nowhere in the document");
            }

            if (string.IsNullOrWhiteSpace(link.Says))
            {
                yield return (link.Page, $"the link to “{link.Target}” has no words");
            }

            if (link.Element is null)
            {
                yield return (link.Page, $"the link to “{link.Target}” stands in what is not read out");
            }
        }
    }
}
