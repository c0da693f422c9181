namespace PaperFlock.Flocks.Reading.Values;

/// <summary>
/// Text in Unicode's composed form, NFC, for the letters of Latin: the framework's own way to it does nothing in the
/// invariant culture, and would need a library of the system. Other letters are left as typed; no face here has them.
/// </summary>
internal static class ComposedText
{
    /// <summary>
    /// A mark, its canonical combining class, and letters before and after it is put on them. All that have two parts among
    /// U+00C0 to U+024F and U+1E00 to U+1EFF: Unicode Character Database, UnicodeData.txt, fields 3 and 5.
    /// </summary>
    private static readonly (char Mark, int Class, string Letters)[] Table =
    [
        ('\u0300', 230, "AÀEÈIÌOÒUÙaàeèiìoòuùÜǛüǜNǸnǹĒḔēḕŌṐōṑWẀwẁÂẦâầĂẰăằÊỀêềÔỒôồƠỜơờƯỪưừYỲyỳ"),
        ('\u0301', 230, "AÁEÉIÍOÓUÚYÝaáeéiíoóuúyýCĆcćLĹlĺNŃnńRŔrŕSŚsśZŹzźÜǗüǘGǴgǵÅǺåǻÆǼæǽØǾøǿÇḈçḉĒḖēḗÏḮïḯKḰkḱMḾmḿÕṌõṍŌṒōṓPṔpṕŨṸũṹWẂwẃÂẤâấĂẮăắÊẾêếÔỐôốƠỚơớƯỨưứ"),
        ('\u0302', 230, "AÂEÊIÎOÔUÛaâeêiîoôuûCĈcĉGĜgĝHĤhĥJĴjĵSŜsŝWŴwŵYŶyŷZẐzẑẠẬạậẸỆẹệỌỘọộ"),
        ('\u0303', 230, "AÃNÑOÕaãnñoõIĨiĩUŨuũVṼvṽÂẪâẫĂẴăẵEẼeẽÊỄêễÔỖôỗƠỠơỡƯỮưữYỸyỹ"),
        ('\u0304', 230, "AĀaāEĒeēIĪiīOŌoōUŪuūÜǕüǖÄǞäǟȦǠȧǡÆǢæǣǪǬǫǭÖȪöȫÕȬõȭȮȰȯȱYȲyȳGḠgḡḶḸḷḹṚṜṛṝ"),
        ('\u0306', 230, "AĂaăEĔeĕGĞgğIĬiĭOŎoŏUŬuŭȨḜȩḝẠẶạặ"),
        ('\u0307', 230, "CĊcċEĖeėGĠgġIİZŻzżAȦaȧOȮoȯBḂbḃDḊdḋFḞfḟHḢhḣMṀmṁNṄnṅPṖpṗRṘrṙSṠsṡŚṤśṥŠṦšṧṢṨṣṩTṪtṫWẆwẇXẊxẋYẎyẏſẛ"),
        ('\u0308', 230, "AÄEËIÏOÖUÜaäeëiïoöuüyÿYŸHḦhḧÕṎõṏŪṺūṻWẄwẅXẌxẍtẗ"),
        ('\u0309', 230, "AẢaảÂẨâẩĂẲăẳEẺeẻÊỂêểIỈiỉOỎoỏÔỔôổƠỞơởUỦuủƯỬưửYỶyỷ"),
        ('\u030A', 230, "AÅaåUŮuůwẘyẙ"),
        ('\u030B', 230, "OŐoőUŰuű"),
        ('\u030C', 230, "CČcčDĎdďEĚeěLĽlľNŇnňRŘrřSŠsšTŤtťZŽzžAǍaǎIǏiǐOǑoǒUǓuǔÜǙüǚGǦgǧKǨkǩƷǮʒǯjǰHȞhȟ"),
        ('\u030F', 230, "AȀaȁEȄeȅIȈiȉOȌoȍRȐrȑUȔuȕ"),
        ('\u0311', 230, "AȂaȃEȆeȇIȊiȋOȎoȏRȒrȓUȖuȗ"),
        ('\u031B', 216, "OƠoơUƯuư"),
        ('\u0323', 220, "BḄbḅDḌdḍHḤhḥKḲkḳLḶlḷMṂmṃNṆnṇRṚrṛSṢsṣTṬtṭVṾvṿWẈwẉZẒzẓAẠaạEẸeẹIỊiịOỌoọƠỢơợUỤuụƯỰưựYỴyỵ"),
        ('\u0324', 220, "UṲuṳ"),
        ('\u0325', 220, "AḀaḁ"),
        ('\u0326', 220, "SȘsșTȚtț"),
        ('\u0327', 202, "CÇcçGĢgģKĶkķLĻlļNŅnņRŖrŗSŞsşTŢtţEȨeȩDḐdḑHḨhḩ"),
        ('\u0328', 202, "AĄaąEĘeęIĮiįUŲuųOǪoǫ"),
        ('\u032D', 220, "DḒdḓEḘeḙLḼlḽNṊnṋTṰtṱUṶuṷ"),
        ('\u032E', 220, "HḪhḫ"),
        ('\u0330', 220, "EḚeḛIḬiḭUṴuṵ"),
        ('\u0331', 220, "BḆbḇDḎdḏKḴkḵLḺlḻNṈnṉRṞrṟTṮtṯZẔzẕhẖ"),
    ];

    private static readonly Dictionary<char, int> Classes = Table.ToDictionary(row => row.Mark, row => row.Class);

    private static readonly Dictionary<(char Letter, char Mark), char> Composed =
        Table.SelectMany(row => row.Letters.Chunk(2).Select(two => (Key: (two[0], row.Mark), Value: two[1]))).ToDictionary();

    private static readonly Dictionary<char, (char Letter, char Mark)> Parts = Composed.ToDictionary(c => c.Value, c => c.Key);

    /// <summary>No place holds a longer text, and putting marks in order takes the square of their number.</summary>
    private const int Longest = 1000;

    /// <returns>The same text where it is composed already, or longer than any that is taken.</returns>
    public static string Of(string text) =>
        Ascii.IsValid(text) || text.Length > Longest ? text : Compose(Ordered(Decompose(text)));

    private static List<char> Decompose(string text)
    {
        var apart = new List<char>(text.Length * 2);
        foreach (var c in text)
        {
            Take(c);
        }

        return apart;

        void Take(char c)
        {
            // Signs that are letters by another code: kelvin, ångström, and two marks of tone.
            var plain = c switch { '\u212A' => 'K', '\u212B' => '\u00C5', '\u0340' => '\u0300', '\u0341' => '\u0301', _ => c };
            if (Parts.TryGetValue(plain, out var parts))
            {
                Take(parts.Letter);
                apart.Add(parts.Mark);
            }
            else
            {
                apart.Add(plain);
            }
        }
    }

    /// <summary>Marks of one letter by class, those of one class as typed.</summary>
    private static List<char> Ordered(List<char> apart)
    {
        for (var at = 1; at < apart.Count; at++)
        {
            for (var i = at; i > 0 && ClassOf(apart[i]) is > 0 and var own && ClassOf(apart[i - 1]) > own; i--)
            {
                (apart[i - 1], apart[i]) = (apart[i], apart[i - 1]);
            }
        }

        return apart;
    }

    private static string Compose(List<char> apart)
    {
        var text = new StringBuilder(apart.Count);
        var (letter, last) = (-1, 0);
        foreach (var c in apart)
        {
            var own = ClassOf(c);
            // A mark of the same class between it and the letter keeps it off.
            if (letter >= 0 && own > last && Composed.TryGetValue((text[letter], c), out var composed))
            {
                text[letter] = composed;
                continue;
            }

            (letter, last) = own == 0 ? (text.Length, 0) : (letter, own);
            text.Append(c);
        }

        return text.ToString();
    }

    private static int ClassOf(char c) => Classes.GetValueOrDefault(c);
}
