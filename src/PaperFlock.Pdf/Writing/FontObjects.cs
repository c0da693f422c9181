using System.IO.Hashing;
using PaperFlock.Pdf.Fonts;

namespace PaperFlock.Pdf.Writing;

/// <summary>
/// A face as the objects of a composite font (ISO 32000-1, 9.7 and 9.8) in which a code is the number of a glyph (Identity-H).
/// Outlines, widths and characters are those of the glyphs used.
/// </summary>
internal static class FontObjects
{
    /// <summary>So many characters are in a block of a character map at most (Adobe Technical Note 5411).</summary>
    private const int CharactersToABlock = 100;

    /// <summary>Widths and heights are thousandths of the em, whatever the font file counts in (9.2.4).</summary>
    private const double Em = 1000;

    // Table 123. Symbolic: a code is no letter.
    private const int Symbolic = 4;
    private const int FixedPitch = 1;

    /// <returns>The font itself.</returns>
    public static Reference Write(PdfFile file, FontFace face, IReadOnlyDictionary<ushort, Rune> used)
    {
        var (font, descendant, descriptor, program, characters) = (file.Next(), file.Next(), file.Next(), file.Next(), file.Next());
        var name = $"{SubsetTag(used.Keys)}+{face.File.Name}";
        file.Begin(font).Add($"<</Type/Font/Subtype/Type0/BaseFont/{name}/Encoding/Identity-H/DescendantFonts[{descendant}]/ToUnicode {characters}>>");
        file.End();
        WriteDescendant(file.Begin(descendant), face, name, descriptor, used);
        file.End();
        WriteDescriptor(file.Begin(descriptor), face.File, name, program);
        file.End();
        var subset = FontSubset.Of(face.File, used.Keys);
        file.WriteStream(program, Flate.Compress(subset), string.Create(CultureInfo.InvariantCulture, $"/Length1 {subset.Length}{Flate.Entry}"));
        file.WriteStream(characters, Flate.Compress(CharacterMap(used)), Flate.Entry);
        return font;
    }

    /// <summary>9.6.4: six capitals, others for other glyphs.</summary>
    private static string SubsetTag(IEnumerable<ushort> glyphs)
    {
        var hash = XxHash128.Hash(Encoding.ASCII.GetBytes(string.Join(' ', glyphs)));
        return string.Concat(hash.Take(6).Select(value => (char)('A' + (value % 26))));
    }

    private static void WriteDescendant(PdfBuffer body, FontFace face, string name, Reference descriptor, IReadOnlyDictionary<ushort, Rune> used)
    {
        body.Add($"<</Type/Font/Subtype/CIDFontType2/BaseFont/{name}/CIDSystemInfo<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>");
        // 9.7.4.3: what is not in the list is as wide as a space, as in a mono face everything is.
        var usual = face[new Rune(' ')].Advance;
        body.Add($"/CIDToGIDMap/Identity/FontDescriptor {descriptor}/DW {Em * usual / face.UnitsPerEm}/W[");
        foreach (var glyph in used.Keys)
        {
            if (face.File.AdvanceOf(glyph) is var advance && advance != usual)
            {
                body.Add($"{glyph}[{Em * advance / face.UnitsPerEm}]");
            }
        }

        body.Add("]>>"u8);
    }

    private static void WriteDescriptor(PdfBuffer body, FontFile font, string name, Reference program)
    {
        var bounds = font.Bounds;
        body.Add($"<</Type/FontDescriptor/FontName/{name}/Flags {Symbolic + (font.IsFixedPitch ? FixedPitch : 0)}");
        body.Add($"/FontBBox[{Ems(bounds.Left)} {Ems(bounds.Lowest)} {Ems(bounds.Right)} {Ems(bounds.Highest)}]/ItalicAngle 0");
        body.Add($"/Ascent {Ems(font.Ascent)}/Descent {-Ems(font.Descent)}/CapHeight {Ems(font.CapHeight)}/StemV {Ems(font.Stem)}/FontFile2 {program}>>");

        double Ems(int units) => Em * units / font.UnitsPerEm;
    }

    /// <summary>9.10.3: what a reader copies and searches. The box for what the face lacks is no character.</summary>
    private static ReadOnlySpan<byte> CharacterMap(IReadOnlyDictionary<ushort, Rune> used)
    {
        var map = new PdfBuffer();
        map.Add("/CIDInit/ProcSet findresource begin\n12 dict begin\nbegincmap\n/CIDSystemInfo<</Registry(Adobe)/Ordering(UCS)/Supplement 0>>def\n"u8);
        map.Add("/CMapName/Adobe-Identity-UCS def\n/CMapType 2 def\n1 begincodespacerange\n<0000><FFFF>\nendcodespacerange\n"u8);
        Span<char> units = stackalloc char[2];
        foreach (var block in used.Where(glyph => glyph.Key > 0).Chunk(CharactersToABlock))
        {
            map.Add($"{block.Length} beginbfchar\n");
            foreach (var (glyph, character) in block)
            {
                map.Add("<"u8);
                map.AddHex(glyph);
                map.Add("><"u8);
                foreach (var unit in units[..character.EncodeToUtf16(units)])
                {
                    map.AddHex(unit);
                }

                map.Add(">\n"u8);
            }

            map.Add("endbfchar\n"u8);
        }

        map.Add("endcmap\nCMapName currentdict/CMap defineresource pop\nend\nend\n"u8);
        return map.Written;
    }
}
