namespace PaperFlock.Flocks.Editing;

/// <summary>Whether two trees say the same: the same keys in the same order, the same values as text. Where they stand and how they are quoted is no matter.</summary>
/// <remarks>
/// Nor do line breaks at the end of a value count: a block that keeps its breaks has one more when a line is put below
/// the last line of a file. The reader makes nothing of them where it allows them at all.
/// </remarks>
internal static class Meaning
{
    public static bool IsSame(Node one, Node other) => (one, other) switch
    {
        (Scalar a, Scalar b) => a.Text.TrimEnd('\n') == b.Text.TrimEnd('\n') && a.IsBlank == b.IsBlank,
        (Sequence a, Sequence b) => a.Items.Length == b.Items.Length && a.Items.Zip(b.Items).All(p => IsSame(p.First, p.Second)),
        (Mapping a, Mapping b) => a.Entries.Length == b.Entries.Length
            && a.Entries.Zip(b.Entries).All(p => p.First.Key.Text == p.Second.Key.Text && IsSame(p.First.Value, p.Second.Value)),
        _ => false,
    };
}
