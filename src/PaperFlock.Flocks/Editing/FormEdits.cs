using System.Text.Json;
using System.Text.Json.Nodes;

namespace PaperFlock.Flocks.Editing;

/// <summary>What was typed into a form, as changes of the flock file it shows.</summary>
/// <remarks>
/// An edit is an object: <c>path</c>, the keys as texts and items of lists as numbers from 0, and one of <c>set</c>, a text, a list of texts or an object of them,
/// where what is empty takes the key or the item away; <c>add</c>, a list of new items at the end of the list there; and <c>remove: true</c>, which takes away the item or the key.
/// Sections on the way that are not there are made. Edits follow one another, each made in the file as those before it left it.
/// </remarks>
public static class FormEdits
{
    /// <returns>All of them made, or none.</returns>
    /// <exception cref="ArgumentException">An edit is none, or of a place that cannot be.</exception>
    public static FlockEdit Apply(FlockFile file, JsonArray edits)
    {
        var (now, waiting) = (file, new List<FlockChange>());
        foreach (var edit in edits.Select(e => e!.AsObject()))
        {
            var path = edit["path"]!.AsArray();
            if (IsReady(now, path))
            {
                waiting.Add(Change(now, path, edit));
                continue;
            }

            // Something on the way is made by this edit, or by one before it: places are those of the file at that moment.
            if (waiting.Count > 0 && now.Apply(waiting) is var made)
            {
                if (made.File is null)
                {
                    return made;
                }

                (now, waiting) = (made.File, []);
            }

            waiting.Add(Change(now, path, edit));
        }

        return now.Apply(waiting);
    }

    private static bool IsReady(FlockFile file, JsonArray path) => file.Has(Place(path, path.Count - 1));

    private static FlockChange Change(FlockFile file, JsonArray path, JsonObject edit)
    {
        if (edit["add"] is JsonArray items)
        {
            var item = FormOf(path).Among<ListForm>().Item;
            return new AddToList(Place(path, path.Count - 1), Key(path, path.Count - 1), [.. items.Select(i => Value(i, item)).OfType<FlockValue>()]);
        }

        var value = edit["set"] is { } set ? Value(set, FormOf(path)) : null;
        if (path[^1]!.GetValueKind() == JsonValueKind.Number)
        {
            return value is null
                ? new RemoveFromList(Place(path, path.Count - 2), Key(path, path.Count - 2), path[^1]!.GetValue<int>())
                : throw new ArgumentException("An item of a list is added or removed, or its keys are set.", nameof(edit));
        }

        // The nearest section that is there; those below it go in with the value.
        var at = path.Count - 1;
        for (; !file.Has(Place(path, at)); at--)
        {
            value = value is null ? null : FlockValue.Section((Key(path, at), value));
        }

        return value is null ? new ClearKey(Place(path, at), Key(path, at)) : new SetKey(Place(path, at), Key(path, at), value);
    }

    private static string Key(JsonArray path, int at) => path[at]!.GetValue<string>();

    private static FlockPlace Place(JsonArray path, int length) => path.Take(length).Aggregate(
        FlockPlace.Top,
        (place, step) => step!.GetValueKind() == JsonValueKind.Number ? place.Item(step.GetValue<int>()) : place.Key(step.GetValue<string>()));

    /// <returns>Null where nothing is to be written.</returns>
    private static FlockValue? Value(JsonNode? typed, Form form) => typed switch
    {
        JsonArray list => list.Select(i => Value(i, form.Among<ListForm>().Item)).OfType<FlockValue>().ToList() is { Count: > 0 } items ? FlockValue.List(items) : null,
        JsonObject section => Entries(section, form.Among<SectionForm>().Table).ToList() is { Count: > 0 } entries ? FlockValue.Section(entries) : null,
        null => null,
        _ when typed.GetValue<string>() is var text && string.IsNullOrWhiteSpace(text) => null,
        _ => IsText(form) ? FlockValue.Text(typed.GetValue<string>().Trim()) : FlockValue.Word(typed.GetValue<string>().Trim()),
    };

    private static IEnumerable<(string Key, FlockValue Value)> Entries(JsonObject section, KeyTable table) =>
        from entry in section
        let value = Value(entry.Value, FormOf(table, entry.Key))
        where value is not null
        select (entry.Key, value);

    private static bool IsText(Form form) => form is TextForm || (form is EitherForm either && (IsText(either.One) || IsText(either.Other)));

    /// <summary>What may stand at the end of a path.</summary>
    private static Form FormOf(JsonArray path) => path.Aggregate(
        Form.Section(""),
        (form, step) => step!.GetValueKind() == JsonValueKind.Number ? form.Among<ListForm>().Item : FormOf(form.Among<SectionForm>().Table, step.GetValue<string>()));

    /// <summary>A key the format does not know may be there all the same, and is taken away as any other.</summary>
    private static Form FormOf(KeyTable table, string key) => table.Keys.FirstOrDefault(k => k.Name == key)?.Form ?? Form.Text();
}
