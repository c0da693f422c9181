using System.Buffers.Binary;

namespace PaperFlock.Pdf.Fonts;

/// <summary>
/// Letters a font lacks though it has their letter and their mark, such as the long o of Maori names: the mark is put over or under the letter, and the
/// two are a glyph of the font like any other, numbered after its own.
/// </summary>
internal static class MadeLetters
{
    // Parts of a compound glyph (OpenType specification, table glyf).
    private const ushort ArgumentsAreWords = 0x0001;
    private const ushort ArgumentsAreOffsets = 0x0002;
    private const ushort MorePartsFollow = 0x0020;
    private const ushort UseMetricsOfPart = 0x0200;

    /// <summary>A letter of the font that has the mark as a part of its own; whether it goes under; letters before and after it is put on them.</summary>
    /// <remarks>
    /// Unicode Character Database, UnicodeData.txt, field 5: those among U+00C0 to U+024F and U+1E00 to U+1EFF that the faces lack, and that stay within
    /// the line in all four, as does the capital of each. So a capital with two marks is not among them, nor is its small letter.
    /// </remarks>
    private static readonly (char With, bool IsUnder, string Letters)[] Table =
    [
        // Under first: another mark may go over these.
        ('ż', true, "BḄbḅDḌdḍHḤhḥKḲkḳLḶlḷMṂmṃNṆnṇRṚrṛSṢsṣTṬtṭVṾvṿWẈwẉZẒzẓAẠaạEẸeẹIỊiịOỌoọUỤuụ"),
        ('ä', true, "UṲuṳ"),
        ('ů', true, "AḀaḁ"),
        ('â', true, "DḒdḓEḘeḙLḼlḽNṊnṋTṰtṱUṶuṷ"),
        ('ă', true, "HḪhḫ"),
        ('ã', true, "EḚeḛIḬiḭUṴuṵ"),
        ('ā', true, "BḆbḇDḎdḏKḴkḵLḺlḻNṈnṉRṞrṟTṮtṯZẔzẕhẖ"),
        ('ż', false, "AȦaȧOȮoȯBḂbḃDḊdḋFḞfḟHḢhḣMṀmṁNṄnṅPṖpṗRṘrṙSṠsṡṢṨṣṩTṪtṫWẆwẇXẊxẋYẎyẏ"),
        ('ā', false, "OŌoōÆǢæǣYȲyȳGḠgḡḶḸḷḹṚṜṛṝ"),
        ('ã', false, "IĨiĩUŨuũVṼvṽEẼeẽYỸyỹ"),
        ('à', false, "NǸnǹ"),
        ('á', false, "GǴgǵÆǼæǽØǾøǿÇḈçḉKḰkḱMḾmḿPṔpṕ"),
        ('â', false, "CĈcĉGĜgĝHĤhĥJĴjĵSŜsŝZẐzẑẠẬạậẸỆẹệỌỘọộ"),
        ('ă', false, "EĔeĕIĬiĭOŎoŏUŬuŭẠẶạặ"),
        ('ä', false, "HḦhḧXẌxẍtẗ"),
        ('ů', false, "wẘyẙ"),
        ('č', false, "AǍaǎIǏiǐOǑoǒUǓuǔGǦgǧKǨkǩjǰHȞhȟ"),
    ];

    public static void AddTo(FontFile font)
    {
        var overSmall = font.Glyphs.BoxOf(font.Characters['o']).Highest;
        foreach (var (with, isUnder, letters) in Table)
        {
            if (font.Glyphs.PartsOf(font.Characters[with]).LastOrDefault() is not (> 0 and var mark))
            {
                continue;
            }

            foreach (var pair in letters.Chunk(2))
            {
                // A mark over i or j takes the place of its dot.
                var letter = font.Characters[(pair[0], isUnder) switch { ('i', false) => 'ı', ('j', false) => 'ȷ', var (own, _) => own }];
                if (letter > 0 && font.Characters[pair[1]] == 0)
                {
                    Add(font, pair[1], letter, mark, isUnder, overSmall);
                }
            }
        }
    }

    private static void Add(FontFile font, char made, ushort letter, ushort mark, bool isUnder, int overSmall)
    {
        var (below, above) = (font.Glyphs.BoxOf(letter), font.Glyphs.BoxOf(mark));
        // As far from its letter as the mark is drawn from a small one.
        var up = isUnder ? below.Lowest - (above.Lowest - overSmall) - above.Highest : Math.Max(0, below.Highest - overSmall);
        var along = ((below.Left + below.Right) - (above.Left + above.Right)) / 2;
        var box = new GlyphBox(Math.Min(below.Left, above.Left + along), Math.Min(below.Lowest, above.Lowest + up), Math.Max(below.Right, above.Right + along), Math.Max(below.Highest, above.Highest + up));
        font.Characters.Add(made, font.Add(Outline(box, letter, mark, along, up), letter, [new GlyphPart(letter, 0, 0), new GlyphPart(mark, along, up)]));
    }

    private static byte[] Outline(GlyphBox box, ushort letter, ushort mark, int along, int up)
    {
        const ushort Placed = ArgumentsAreWords | ArgumentsAreOffsets;
        int[] words = [-1, box.Left, box.Lowest, box.Right, box.Highest, Placed | MorePartsFollow | UseMetricsOfPart, letter, 0, 0, Placed, mark, along, up];
        var bytes = new byte[2 * words.Length];
        foreach (var (i, word) in words.Index())
        {
            BinaryPrimitives.WriteInt16BigEndian(bytes.AsSpan(2 * i), unchecked((short)word));
        }

        return bytes;
    }
}
