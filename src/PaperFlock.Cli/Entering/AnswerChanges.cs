using NodaTime.Text;
using PaperFlock.Flocks.Editing;

namespace PaperFlock.Cli.Entering;

/// <summary>From an answer to changes of the flock file.</summary>
internal static class AnswerChanges
{
    /// <returns>Only what is not so already.</returns>
    /// <exception cref="ArgumentException">There is no such ewe.</exception>
    public static IEnumerable<FlockChange> Of(EweAnswer answer, FlockFile file, string tag)
    {
        var place = PlaceOf(file, tag) ?? throw new ArgumentException($"There is no ewe `{tag}`.", nameof(tag));
        foreach (var part in answer.Parts)
        {
            switch (part)
            {
                case KeyPart { Value: null } key when file.ValueOf(place, key.Key) is not null || !file.ItemsOf(place, key.Key).IsEmpty:
                    yield return new ClearKey(place, key.Key);
                    break;
                case KeyPart { Value: { } value } key when !string.Equals(file.ValueOf(place, key.Key), value, StringComparison.OrdinalIgnoreCase):
                    yield return new SetKey(place, key.Key, FlockValue.Word(value));
                    break;
                case MarkPart mark:
                    var day = LocalDatePattern.Iso.Format(mark.Day);
                    var at = file.ItemsOf(place, "marks").IndexOf(day);
                    if (mark.Seen && at < 0)
                    {
                        yield return new AddToList(place, "marks", FlockValue.Word(day));
                    }
                    else if (!mark.Seen && at >= 0)
                    {
                        yield return new RemoveFromList(place, "marks", at);
                    }

                    break;
            }
        }
    }

    private static FlockPlace? PlaceOf(FlockFile file, string tag)
    {
        var index = file.Flock.Ewes.Select(e => e.Tag).ToList().IndexOf(tag);
        return index < 0 ? null : FlockPlace.Ewe(index);
    }
}
