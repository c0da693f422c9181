namespace PaperFlock.Packs;

/// <summary>The list of contents a reader of the PDF shows beside the pages.</summary>
internal static class PackOutline
{
    /// <summary>
    /// An entry for each sheet; sheets of one kind that follow each other are gathered below one entry, and what a sheet holds, such as cards,
    /// stands below the sheet, each on the page it is on.
    /// </summary>
    public static ImmutableArray<OutlineEntry> Of(ImmutableArray<Sheet> sheets)
    {
        var entries = ImmutableArray.CreateBuilder<OutlineEntry>();
        var page = 0;
        for (var i = 0; i < sheets.Length;)
        {
            var sheet = sheets[i].Definition;
            var children = ImmutableArray.CreateBuilder<OutlineEntry>();
            for (; i < sheets.Length && sheets[i].Definition == sheet; i++)
            {
                children.Add(EntryOf(sheets[i], page));
                page += sheets[i].Sides.Length;
            }

            entries.Add(children.Count > 1 ? new OutlineEntry(sheet.Together ?? sheet.Kind, children[0].Page, children.ToImmutable()) : children[0]);
        }

        return entries.ToImmutable();
    }

    private static OutlineEntry EntryOf(Sheet sheet, int first)
    {
        var things = sheet.Sides.SelectMany((side, i) => side.Contents.Select(thing => new OutlineEntry(thing.ToString(), first + i, [])));
        return new OutlineEntry($"{sheet.Code} {sheet.Title}", first, [.. things]);
    }
}
