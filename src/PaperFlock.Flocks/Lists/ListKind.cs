namespace PaperFlock.Flocks.Lists;

/// <summary>What is given for a list and is none, by the bytes such files begin with; from memory.</summary>
internal static class ListKind
{
    private static readonly (byte[] Begins, string Kind)[] Kinds =
    [
        ([0xD0, 0xCF, 0x11, 0xE0], "a spreadsheet\u2019s own file (.xls)"),
        ([.. "%PDF-"u8], "a PDF"),
        ([.. "{\\rtf"u8], "a word processor\u2019s document"),
        ([.. "<!"u8], "a web page"),
        ([.. "<html"u8], "a web page"),
        ([.. "<?xml"u8], "a file of XML"),
        ([0x89, (byte)'P', (byte)'N', (byte)'G'], "a picture"),
        ([0xFF, 0xD8, 0xFF], "a picture"),
    ];

    /// <returns>Null for what may be a text of rows and cells.</returns>
    public static string? Other(byte[] bytes)
    {
        if (bytes.AsSpan().StartsWith("PK\x03\x04"u8))
        {
            return bytes.AsSpan().IndexOf("xl/"u8) > 0 ? "a spreadsheet\u2019s own file (.xlsx)"
                : bytes.AsSpan().IndexOf("opendocument.spreadsheet"u8) > 0 ? "a spreadsheet\u2019s own file (.ods)"
                : "a packed file";
        }

        return Kinds.FirstOrDefault(k => bytes.AsSpan().StartsWith(k.Begins)).Kind;
    }
}
