namespace PaperFlock.Cli.Entering;

/// <summary>From an answer to changes of the flock file, and back.</summary>
internal static class AnswerChanges
{
    /// <param name="ewe">Her place in the flock, from 0.</param>
    /// <returns>Only what is not so already.</returns>
    public static IEnumerable<FlockChange> Of(AnswerPart part, FlockFile file, int ewe)
    {
        var place = FlockPlace.Ewe(ewe);
        return part.IsSame(Now(part, file, ewe)) ? []
            : part.Value is null ? [new ClearKey(place, part.Key)]
            : part is MarksPart marks ? Marks(marks.Days, file.ItemsOf(place, part.Key), place)
            : [new SetKey(place, part.Key, part.Value)];
    }

    /// <summary>What the file says now where an answer would say something: given as an answer, it puts things back.</summary>
    public static AnswerPart Now(AnswerPart part, FlockFile file, int ewe)
    {
        var place = FlockPlace.Ewe(ewe);
        return part is MarksPart ? new MarksPart(file.ItemsOf(place, part.Key)) : new AnswerPart(part.Key, file.ValueOf(place, part.Key));
    }

    /// <summary>Day by day, so that the list keeps its layout and its comments; those to come first, so that it is never empty on the way.</summary>
    private static IEnumerable<FlockChange> Marks(ImmutableArray<string> days, ImmutableArray<string> written, FlockPlace place)
    {
        if (days.Except(written).Select(FlockValue.Word).ToImmutableArray() is { IsEmpty: false } come)
        {
            yield return new AddToList(place, "marks", come);
        }

        foreach (var (at, _) in written.Index().Reverse().Where(day => !days.Contains(day.Item)))
        {
            yield return new RemoveFromList(place, "marks", at);
        }
    }
}
