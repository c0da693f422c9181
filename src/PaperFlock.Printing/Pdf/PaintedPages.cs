using System.Collections.Immutable;
using PaperFlock.Printing.Painting;

namespace PaperFlock.Printing.Pdf;

/// <summary>Pages that follow each other, painted.</summary>
/// <param name="Contents">Of each page its content stream, compressed.</param>
/// <param name="Glyphs">Used on them.</param>
/// <param name="Links">Met on them; page numbers are those of the whole document.</param>
internal sealed record PaintedPages(ImmutableArray<byte[]> Contents, GlyphUse Glyphs, LinkMap Links)
{
    /// <summary>The pages from one index up to another, not included.</summary>
    public static PaintedPages Paint(PrintDocument document, int start, int end)
    {
        var (glyphs, links) = (new GlyphUse(), new LinkMap());
        using var flate = new Flate();
        var canvas = new ContentCanvas(glyphs);
        var painter = new PiecePainter(canvas, links);
        var contents = ImmutableArray.CreateBuilder<byte[]>(end - start);
        for (var i = start; i < end; i++)
        {
            var page = document.Pages[i].Page;
            canvas.Begin(page.Paper.Height);
            painter.Paint(page, i);
            contents.Add(flate.Compress(canvas.Content));
        }

        return new PaintedPages(contents.MoveToImmutable(), glyphs, links);
    }

    /// <summary>Makes one of parts that follow each other.</summary>
    public static PaintedPages Join(ImmutableArray<PaintedPages> parts)
    {
        var (glyphs, links) = (new GlyphUse(), new LinkMap());
        foreach (var part in parts)
        {
            glyphs.Add(part.Glyphs);
            links.Add(part.Links);
        }

        return new PaintedPages([.. parts.SelectMany(part => part.Contents)], glyphs, links);
    }
}
