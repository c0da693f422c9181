using PaperFlock.Planning;

namespace PaperFlock.Cli.Entering;

/// <summary>A printed sheet whose boxes are to be read into the flock file.</summary>
/// <param name="word">As typed after <c>enter</c>.</param>
/// <param name="title">The head of the sheet, and its page code.</param>
/// <param name="noEwes">Why a flock may have no such sheet.</param>
/// <param name="nothing">What <c>-</c> says: all that was written down is taken away.</param>
internal abstract class PencilSheet(string word, string title, string about, string noEwes, Understood nothing)
{
    public string Word => word;

    public string Title => title;

    public string About => about;

    public string NoEwes => noEwes;

    /// <summary>In which order it lists the ewes, to be read behind their number.</summary>
    public virtual string Order => "in the order of the sheet";

    /// <summary>What each key does.</summary>
    public abstract ImmutableArray<(string Keys, string Meaning)> Keys { get; }

    /// <summary>The columns of a spreadsheet that say the same.</summary>
    public abstract ImmutableArray<ResultColumn> Columns { get; }

    /// <summary>Whether a spreadsheet may have several rows for one ewe, each with something more.</summary>
    public virtual bool RowsMayRepeat => false;

    /// <summary>In the order the sheet lists them.</summary>
    public abstract ImmutableArray<EwePlan> Ewes(SeasonPlan plan);

    /// <summary>What the file says now; empty when nothing.</summary>
    public abstract string Known(Asked asked);

    /// <param name="typed">Not blank; without blanks round it.</param>
    public Understood Understand(string typed, Asked asked) => typed == "-" ? nothing : Read(typed, asked);

    /// <param name="cells">By the names of <see cref="Columns"/>; none is blank, and there is at least one. Where rows may repeat a column may come twice.</param>
    public abstract Understood Understand(ImmutableArray<(string Column, string Text)> cells, Asked asked);

    /// <inheritdoc cref="Understand(string, Asked)"/>
    protected abstract Understood Read(string typed, Asked asked);
}

/// <summary>A column that a results file may have.</summary>
/// <param name="Name">What the program calls it.</param>
/// <param name="Headings">Other names for it; letters and figures alone count, capitals not.</param>
internal sealed record ResultColumn(string Name, params string[] Headings);
