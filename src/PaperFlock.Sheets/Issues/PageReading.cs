using System.Collections.Immutable;
using System.Text;
using NodaTime;
using PaperFlock.Layout.Pieces;

namespace PaperFlock.Sheets.Issues;

/// <summary>A row and where it stands, in points from the top left corner of what was read.</summary>
/// <param name="Piece">Null for a paragraph.</param>
internal sealed record PlacedRow(LeafRow Row, double Left, double Top, double Width, double Height, Piece? Piece);

/// <summary>Reads a page row by row, as somebody would who cares what it says and not how it looks.</summary>
internal static class PageReading
{
    /// <summary>Name of what changes from issue to issue whatever the flock does: control lines, issue numbers, words about the last issue.</summary>
    public const string IssueMark = "issue mark";

    public static ImmutableArray<PlacedRow> Read(Piece page)
    {
        var rows = ImmutableArray.CreateBuilder<PlacedRow>();
        Read(page, 0, 0, string.Empty, null, new Reading(rows, new StringBuilder()));
        return rows.ToImmutable();
    }

    /// <param name="about">What paragraphs are about: the dated piece they are in.</param>
    /// <param name="until">Its last day.</param>
    private static void Read(Piece piece, double left, double top, string about, LocalDate? until, Reading reading)
    {
        // How often heads of columns stand there depends on where pages end.
        if (piece.Name == IssueMark || piece.IsHead)
        {
            return;
        }

        var (name, last) = Dated.Parse(piece.Name ?? string.Empty);
        if (piece.Row is not null)
        {
            var key = name.Length > 0 ? Tidy(name) : about;
            reading.Rows.Add(new PlacedRow(new LeafRow(key, CellsOf(piece, reading.Words), last ?? until), left, top, piece.Size.Width, piece.Size.Height, piece));
            return;
        }

        if (piece.Says is not null || HasWords(piece))
        {
            reading.Rows.Add(new PlacedRow(new LeafRow(about, [new LeafCell(WordsOf(piece, reading.Words))], until), left, top, piece.Size.Width, piece.Size.Height, null));
            return;
        }

        if (last is not null)
        {
            (about, until) = (Tidy(name), last);
        }

        foreach (var item in piece.Items)
        {
            if (item is PieceItem nested)
            {
                // A back turned round for the printer is read as it was laid out.
                var (x, y) = nested.QuarterTurns == 2 ? (0, 0) : (left + nested.X, top + nested.Y);
                Read(nested.Piece, x, y, about, until, reading);
            }
        }
    }

    private static bool HasWords(Piece piece)
    {
        foreach (var item in piece.Items)
        {
            if (item is TextItem)
            {
                return true;
            }
        }

        return false;
    }

    private static ImmutableArray<LeafCell> CellsOf(Piece row, StringBuilder words)
    {
        var cells = ImmutableArray.CreateBuilder<LeafCell>(row.Items.Length);
        foreach (var item in row.Items)
        {
            if (item is PieceItem cell)
            {
                cells.Add(CellOf(cell.Piece, words));
            }
        }

        return cells.DrainToImmutable();
    }

    private static LeafCell CellOf(Piece cell, StringBuilder words)
    {
        var (_, last) = Dated.Parse(cell.Name ?? string.Empty);
        return new LeafCell(WordsOf(cell, words), last);
    }

    /// <summary>All words in reading order, with one space between lines, and what drawings say.</summary>
    private static string WordsOf(Piece piece, StringBuilder words)
    {
        words.Clear();
        Collect(piece, words);
        return Trimmed(words);
    }

    private static string Tidy(string words)
    {
        var text = new StringBuilder(words.Length);
        Append(text, words, apart: false);
        return Trimmed(text);
    }

    private static void Collect(Piece piece, StringBuilder words)
    {
        if (piece.Name == IssueMark)
        {
            return;
        }

        if (piece.Says is { } says)
        {
            Append(words, says, apart: true);
            return;
        }

        TextItem? before = null;
        foreach (var item in piece.Items)
        {
            switch (item)
            {
                case TextItem text:
                    // A change of face within a word is no space.
                    var follows = before is not null && before.Baseline == text.Baseline && Math.Abs(before.X + before.Width - text.X) < 0.1;
                    Append(words, text.Text, apart: !follows);
                    before = text;
                    break;
                case PieceItem nested:
                    Collect(nested.Piece, words);
                    break;
            }
        }
    }

    /// <summary>One plain space wherever there is space of any kind: how it is laid out is not what it says.</summary>
    private static void Append(StringBuilder words, string text, bool apart)
    {
        var space = apart;
        foreach (var c in text)
        {
            if (char.IsWhiteSpace(c))
            {
                space = true;
                continue;
            }

            if (space && words.Length > 0 && words[^1] != ' ')
            {
                words.Append(' ');
            }

            words.Append(c);
            space = false;
        }

        if (space && words.Length > 0 && words[^1] != ' ')
        {
            words.Append(' ');
        }
    }

    private static string Trimmed(StringBuilder words) => words.Length > 0 && words[^1] == ' ' ? words.ToString(0, words.Length - 1) : words.ToString();

    /// <param name="Words">Room to put words together in.</param>
    private readonly record struct Reading(ImmutableArray<PlacedRow>.Builder Rows, StringBuilder Words);
}
