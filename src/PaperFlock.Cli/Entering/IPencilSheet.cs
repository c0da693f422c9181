using PaperFlock.Planning;

namespace PaperFlock.Cli.Entering;

/// <summary>A printed sheet whose boxes are to be read into the flock file.</summary>
internal interface IPencilSheet
{
    /// <summary>As typed after <c>enter</c>.</summary>
    string Word { get; }

    /// <summary>The head of the sheet, and its page code.</summary>
    string Title { get; }

    string About { get; }

    /// <summary>In the order the sheet lists them.</summary>
    ImmutableArray<EwePlan> Ewes(SeasonPlan plan);

    /// <summary>In which order it lists them, to be read behind their number.</summary>
    string Order => "in the order of the sheet";

    /// <summary>Why a flock may have no such sheet.</summary>
    string NoEwes { get; }

    /// <summary>What each key does.</summary>
    ImmutableArray<(string Keys, string Meaning)> Keys { get; }

    /// <summary>The columns of a spreadsheet that say the same.</summary>
    ImmutableArray<ResultColumn> Columns { get; }

    /// <summary>Whether a spreadsheet may have several rows for one ewe, each with something more.</summary>
    bool RowsMayRepeat => false;

    /// <summary>What the file says now; empty when nothing.</summary>
    string Known(Asked asked);

    /// <param name="typed">Not blank; without blanks round it.</param>
    Understood Understand(string typed, Asked asked);

    /// <param name="cells">By the names of <see cref="Columns"/>; none is blank, and there is at least one. Where rows may repeat a column may come twice.</param>
    Understood Understand(ImmutableArray<(string Column, string Text)> cells, Asked asked);
}

/// <summary>A column that a results file may have.</summary>
/// <param name="Name">What the program calls it.</param>
/// <param name="Headings">Other names for it; letters and figures alone count, capitals not.</param>
internal sealed record ResultColumn(string Name, params string[] Headings);
