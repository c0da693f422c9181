using System.Text;
using PaperFlock.Printing.Fonts;

namespace PaperFlock.Printing.Pdf;

/// <summary>
/// A face as the objects of a composite font (ISO 32000-1, 9.7 and 9.8) in which a code is the number of a glyph (Identity-H). The font file is embedded whole, as
/// it is small; widths and characters are said only of the glyphs used.
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
    public static Reference Write(PdfFile file, FontFace face, IEnumerable<(ushort Glyph, Rune Character)> used)
    {
        var glyphs = used.ToList();
        var (font, descendant, descriptor, program, characters) = (file.Next(), file.Next(), file.Next(), file.Next(), file.Next());
        var name = face.Program.Name;
        file.Begin(font).Add($"<</Type/Font/Subtype/Type0/BaseFont/{name}/Encoding/Identity-H/DescendantFonts[{descendant}]/ToUnicode {characters}>>");
        file.End();
        WriteDescendant(file.Begin(descendant), face, descriptor, glyphs);
        file.End();
        WriteDescriptor(file.Begin(descriptor), face, program);
        file.End();
        file.WriteStream(program, face.Program.Compressed, $"/Length1 {face.Program.Length}{Flate.Entry}");
        using var flate = new Flate();
        file.WriteStream(characters, flate.Compress(CharacterMap(glyphs)), Flate.Entry);
        return font;
    }

    private static void WriteDescendant(PdfBuffer body, FontFace face, Reference descriptor, List<(ushort Glyph, Rune Character)> glyphs)
    {
        body.Add($"<</Type/Font/Subtype/CIDFontType2/BaseFont/{face.Program.Name}/CIDSystemInfo<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>");
        // 9.7.4.3: what is not in the list is as wide as a space, as in a mono face everything is.
        var usual = face.Glyphs[new Rune(' ')].Advance;
        body.Add($"/CIDToGIDMap/Identity/FontDescriptor {descriptor}/DW {Em * usual / face.UnitsPerEm}/W[");
        var last = -1;
        foreach (var (glyph, character) in glyphs)
        {
            var advance = face.Glyphs[character].Advance;
            if (advance == usual)
            {
                continue;
            }

            // Neighbours share a list.
            if (last >= 0 && glyph == last + 1)
            {
                body.Add(" "u8);
            }
            else
            {
                body.Add(last < 0 ? ""u8 : "]"u8);
                body.Add($"{glyph}[");
            }

            body.Add(Em * advance / face.UnitsPerEm);
            last = glyph;
        }

        body.Add(last < 0 ? "]>>"u8 : "]]>>"u8);
    }

    private static void WriteDescriptor(PdfBuffer body, FontFace face, Reference program)
    {
        var font = face.Program;
        var (left, lowest, right, highest) = font.Bounds;
        body.Add($"<</Type/FontDescriptor/FontName/{font.Name}/Flags {Symbolic + (font.IsFixedPitch ? FixedPitch : 0)}/FontBBox[{left} {lowest} {right} {highest}]");
        body.Add($"/ItalicAngle 0/Ascent {Em * face.Ascent}/Descent {-Em * face.Descent}/CapHeight {Em * face.CapHeight}/StemV {font.Stem}/FontFile2 {program}>>");
    }

    /// <summary>9.10.3: what a reader copies and searches. The box for what the face lacks is no character.</summary>
    private static ReadOnlySpan<byte> CharacterMap(List<(ushort Glyph, Rune Character)> glyphs)
    {
        var map = new PdfBuffer();
        map.Add("/CIDInit/ProcSet findresource begin\n12 dict begin\nbegincmap\n/CIDSystemInfo<</Registry(Adobe)/Ordering(UCS)/Supplement 0>>def\n"u8);
        map.Add("/CMapName/Adobe-Identity-UCS def\n/CMapType 2 def\n1 begincodespacerange\n<0000><FFFF>\nendcodespacerange\n"u8);
        Span<char> units = stackalloc char[2];
        foreach (var block in glyphs.Where(g => g.Glyph > 0).Chunk(CharactersToABlock))
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
