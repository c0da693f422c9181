namespace PaperFlock.Flocks.Reading.Sections;

/// <summary>Names that must differ, capitals aside, since a person tells the groups or pens apart by them.</summary>
internal sealed class UniqueNames(string what)
{
    private readonly Dictionary<string, int> _lines = new(StringComparer.OrdinalIgnoreCase);

    /// <returns>Null when there is no name, or one already used; reported.</returns>
    public string? Read(Section entry) =>
        entry.Require("name") is not { } field || field.AsText() is not { } name ? null
        : _lines.TryAdd(name, field.Span.Line) ? name
        : field.Refuse<string>(FlockMessages.DuplicateName(field.Span, what, name, _lines[name]));
}
