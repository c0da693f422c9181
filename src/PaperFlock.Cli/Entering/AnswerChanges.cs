using NodaTime.Text;
using PaperFlock.Flocks.Editing;

namespace PaperFlock.Cli.Entering;

/// <summary>From an answer to changes of the flock file, and back.</summary>
internal static class AnswerChanges
{
    /// <param name="ewe">Her place in the flock, from 0.</param>
    /// <returns>Only what is not so already.</returns>
    public static IEnumerable<FlockChange> Of(AnswerPart part, FlockFile file, int ewe)
    {
        var place = FlockPlace.Ewe(ewe);
        switch (part)
        {
            case KeyPart { Value: null } when file.ValueOf(place, part.Key) is not null:
                yield return new ClearKey(place, part.Key);
                break;
            case KeyPart { Value: { } value } when !string.Equals(file.ValueOf(place, part.Key), value, StringComparison.OrdinalIgnoreCase):
                yield return new SetKey(place, part.Key, FlockValue.Word(value));
                break;
            case MarksPart { Days.IsEmpty: true } when !file.ItemsOf(place, part.Key).IsEmpty:
                yield return new ClearKey(place, part.Key);
                break;
            case MarksPart { Days.IsEmpty: false } marks:
                var days = marks.Days.Select(LocalDatePattern.Iso.Format).ToList();
                var written = file.ItemsOf(place, part.Key);
                var come = days.Except(written).Select(d => FlockValue.Word(d)).ToList();
                if (come.Count > 0)
                {
                    // First, so that the list is never empty on the way and keeps its place and its comments.
                    yield return new AddToList(place, part.Key, come);
                }

                for (var at = written.Length - 1; at >= 0; at--)
                {
                    if (!days.Contains(written[at]))
                    {
                        yield return new RemoveFromList(place, part.Key, at);
                    }
                }

                break;
        }
    }

    /// <summary>What the file says now where an answer would say something: given as an answer, it puts things back.</summary>
    public static AnswerPart Now(AnswerPart part, FlockFile file, int ewe) => part is MarksPart
        ? new MarksPart(file.Flock.Ewes[ewe].Marks)
        : new KeyPart(part.Key, file.ValueOf(FlockPlace.Ewe(ewe), part.Key));
}
