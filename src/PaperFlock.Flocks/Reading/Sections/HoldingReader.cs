using System.Collections.Immutable;
using NodaTime;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks.Reading.Values;

namespace PaperFlock.Flocks.Reading.Sections;

internal static class HoldingReader
{
    /// <returns>Null when something required cannot be had; it has been reported.</returns>
    public static Holding? Read(Section holding)
    {
        var name = holding.Require("name")?.AsText();
        var location = holding.RequireBelow("location");
        var latitude = location.Require("latitude")?.AsNumber();
        var longitude = location.Require("longitude")?.AsNumber();
        var zone = holding.Require("time-zone") is { } field ? Zone(field) : null;
        var keeper = holding.Find("keeper")?.AsText();
        var gridReference = holding.Find("grid-reference")?.AsText();
        var postcode = holding.Find("postcode")?.AsText();
        var contacts = Contacts(holding);
        return name is not null && latitude is not null && longitude is not null && zone is not null
            ? new Holding(name, keeper, latitude.Value, longitude.Value, zone, gridReference, postcode, contacts)
            : null;
    }

    private static ImmutableArray<Contact> Contacts(Section holding)
    {
        var contacts = ImmutableArray.CreateBuilder<Contact>();
        foreach (var entry in holding.Find("contacts")?.AsSections() ?? [])
        {
            var role = entry.Require("role")?.AsText();
            var name = entry.Find("name")?.AsText();
            var phone = entry.Find("phone")?.AsText();
            var note = entry.Find("note")?.AsText();
            if (role is not null)
            {
                contacts.Add(new Contact(role, name, phone, note));
                if (!entry.IsGiven("phone") && !entry.IsMistyped("phone"))
                {
                    entry.Bag.Add(FlockMessages.NoPhone(entry.Span, role));
                }
            }
        }

        return contacts.ToImmutable();
    }

    private static DateTimeZone? Zone(Field field)
    {
        if (field.AsScalar() is not { } scalar)
        {
            return null;
        }

        var zones = DateTimeZoneProviders.Tzdb;
        var name = scalar.Text.Trim(' ');
        // Only names in the list: the provider would also make up zones such as UTC+05, which know no summer time.
        if (zones.Ids.Contains(name))
        {
            return zones[name];
        }

        field.Bag.Add(FlockMessages.UnknownTimeZone(field.Span, name, NearestZone(name, zones.Ids)));
        return null;
    }

    /// <summary>A slip of a whole name, else the one whose town alone was given: <c>London</c>.</summary>
    private static string? NearestZone(string name, IReadOnlyCollection<string> ids) =>
        NearestWord.Find(name, ids)
        ?? ids.FirstOrDefault(id => id.EndsWith($"/{name.Replace(' ', '_')}", StringComparison.OrdinalIgnoreCase));
}
