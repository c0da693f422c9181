namespace PaperFlock.Fuzz;

/// <summary>How a case is made.</summary>
internal enum CaseKind
{
    /// <summary>Random bytes.</summary>
    Noise,

    /// <summary>Only the characters that mean something in YAML.</summary>
    Marks,

    /// <summary>A sample with a few bytes changed, added, lost or doubled.</summary>
    Damaged,

    /// <summary>Lines of several samples one after another, as after a careless paste.</summary>
    Spliced,

    /// <summary>A sample with some values replaced by what tired people and spreadsheets write.</summary>
    Clumsy,

    /// <summary>A flock with nothing wrong in it; the reader must take it.</summary>
    Valid,

    /// <summary>Up to the size limit, of one thing over and over: brackets, aliases, ewes, one long line.</summary>
    Huge,

    /// <summary>A pack with some bytes of its PDF changed, to be asked for its record.</summary>
    Pdf,

    /// <summary>A list of ewes out of a spreadsheet, damaged or with clumsy cells, to be added to a flock.</summary>
    List,
}
