namespace PaperFlock.Sheets.Theme;

/// <summary>The paper of a pack, what the printer and the binder leave of it, and on which sides it is printed.</summary>
internal sealed class PageSetup(PrintSettings print)
{
    /// <summary>No ink nearer the edge: home printers cannot be trusted with less.</summary>
    public static readonly double Unprintable = Mm(6);

    /// <summary>At the foot some inkjets lose up to 12 mm.</summary>
    public static readonly double UnprintableFoot = Mm(12);

    /// <summary>Points between the body of a page on its side and its head and control line.</summary>
    public const double SidewaysGap = 6;

    /// <summary>Clears the punched holes of ISO 838: 12 mm to the centre, 6 mm across, a millimetre of slip.</summary>
    private static readonly double BindingMargin = Mm(20);

    public Size Paper { get; } = Papers.Of(print.Paper);

    public Binding Binding => print.Binding;

    public bool SingleSided => print.Duplex == Duplex.SingleSided;

    /// <summary>Width between the margins of an upright page, in points.</summary>
    public double UprightWidth => Paper.Width - Upright(PageSide.Front).Horizontal;

    /// <summary>Size between the margins of a page on its side.</summary>
    public Size SidewaysBody
    {
        get
        {
            var (paper, margins) = (Papers.Landscape(Paper), Sideways(PageSide.Front));
            return new Size(paper.Width - margins.Horizontal, paper.Height - margins.Vertical);
        }
    }

    /// <summary>A back turned round for a printer that flips on the short edge has its head where other pages have their foot.</summary>
    private double HeadMargin => print.Duplex == Duplex.ShortEdge ? UnprintableFoot : Mm(9);

    /// <summary>Margins of an upright binder page.</summary>
    public Edges Upright(PageSide side)
    {
        var binding = Binding == Binding.None ? Mm(10) : BindingMargin;
        return side == PageSide.Front
            ? new Edges(binding, HeadMargin, Mm(9), UnprintableFoot)
            : new Edges(Mm(9), HeadMargin, binding, UnprintableFoot);
    }

    /// <summary>
    /// Margins of a page on its side. In a side-bound binder every such page is turned the same way: the head is at the
    /// binding edge on fronts and at the outer edge on backs, and the left end is the foot of the leaf on both. The page's own foot
    /// keeps as clear, since nobody knows which way a printer turns it.
    /// </summary>
    public Edges Sideways(PageSide side)
    {
        var binding = Binding == Binding.None ? UnprintableFoot : BindingMargin;
        return side == PageSide.Front
            ? new Edges(UnprintableFoot, binding, HeadMargin, UnprintableFoot)
            : new Edges(UnprintableFoot, UnprintableFoot, HeadMargin, binding);
    }
}
