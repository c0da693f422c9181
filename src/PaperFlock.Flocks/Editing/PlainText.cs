namespace PaperFlock.Flocks.Editing;

/// <summary>A tree written out anew, without remarks: sections indented, a key a line; lists of sections under dashes, lists of single values in brackets.</summary>
internal static class PlainText
{
    /// <param name="root">Of a file that could be read.</param>
    public static string Of(Node root)
    {
        var text = new StringBuilder();
        Section((Mapping)root, "", text);
        return text.ToString();
    }

    private static void Section(Mapping section, string indent, StringBuilder text)
    {
        foreach (var (entry, i) in section.Entries.Select((entry, i) => (entry, i)))
        {
            // The first key of a list's entry stands behind its dash.
            text.Append(i == 0 && indent.Length > 0 && text[^1] == ' ' ? "" : indent).Append(NodeText.Flow(entry.Key)).Append(':');
            switch (entry.Value)
            {
                case Mapping { Entries.IsEmpty: false } below:
                    text.Append('\n');
                    Section(below, indent + "  ", text);
                    break;
                case Sequence { Items: [Mapping, ..] } list:
                    text.Append('\n');
                    foreach (var item in list.Items)
                    {
                        text.Append(indent).Append("  - ");
                        Section((Mapping)item, indent + "    ", text);
                    }

                    break;
                case var value:
                    text.Append(value is Scalar { IsBlank: true } ? "" : " ").Append(NodeText.Flow(value)).Append('\n');
                    break;
            }
        }
    }
}
