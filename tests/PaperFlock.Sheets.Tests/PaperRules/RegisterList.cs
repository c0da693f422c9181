namespace PaperFlock.Sheets.Tests.PaperRules;

/// <summary>The list of sheets on the first leaf, read back from where its words stand.</summary>
internal static class RegisterList
{
    public static IEnumerable<string> Wrong(PackInHand pack)
    {
        var register = pack.Sides.Where(s => s.Sheet.Kind == "register").ToArray();
        var rows = register.SelectMany(s => Rows(s.Ink, s.Says.Leaves)).ToLookup(r => r.Code, StringComparer.Ordinal);
        foreach (var sheet in pack.Pack.Sheets.Where(s => s.Kind != "register" && register.Length > 0))
        {
            var found = rows[sheet.Code].ToArray();
            if (found is not [var (_, leaves)] || leaves != sheet.Leaves)
            {
                yield return $"{sheet.Code} has {sheet.Leaves} leaves; the register says {(found.Length == 0 ? "nothing" : string.Join(" and ", found.Select(f => f.Leaves)))}";
            }
        }
    }

    /// <summary>Codes are the only words in 11 pt mono; the leaves stand on their line under the head "leaves".</summary>
    private static IEnumerable<(string Code, int? Leaves)> Rows(PageInk ink, string leavesHead)
    {
        var head = ink.Words.FirstOrDefault(w => w.Text == leavesHead);
        foreach (var code in ink.Words.Where(w => w.IsMono && Math.Abs(w.Style.Size - 11) < 0.01))
        {
            var leaves = head is null ? null : ink.Words.FirstOrDefault(w => !w.IsMono && Math.Abs(w.Baseline - code.Baseline) < 4 && Math.Abs(w.Core.MiddleX - head.Core.MiddleX) < 8);
            yield return (code.Text, int.TryParse(leaves?.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : null);
        }
    }
}
