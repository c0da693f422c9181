namespace PaperFlock.Flocks.Reading.Sections;

internal static class FieldsReader
{
    public static ClassFields Read(Section fields) => new(
        fields.Find("singles")?.AsText(),
        fields.Find("twins")?.AsText(),
        fields.Find("triplets")?.AsText(),
        fields.Find("not-in-lamb")?.AsText(),
        fields.Find("with-lambs")?.AsText());
}
