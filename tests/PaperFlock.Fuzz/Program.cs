using System.Diagnostics;
using PaperFlock.Fuzz;
using PaperFlock.Packs.Screen;

// Ends with 0 when nothing was found, 1 when something was, 2 when asked for what it cannot do.
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
const long MostMemory = 300L * 1024 * 1024;
var (cases, seed, only) = (1_000_000, 1, -1);
for (var i = 0; i < args.Length; i += 2)
{
    if (i + 1 >= args.Length || !int.TryParse(args[i + 1], NumberStyles.None, CultureInfo.InvariantCulture, out var number) || args[i] is not ("--cases" or "--seed" or "--only"))
    {
        Console.Error.WriteLine("usage: PaperFlock.Fuzz [--cases NUMBER] [--seed NUMBER] [--only CASE]");
        return 2;
    }

    (cases, seed, only) = args[i] switch
    {
        "--cases" => (number, seed, only),
        "--seed" => (cases, number, only),
        _ => (cases, seed, number),
    };
}

var folder = Path.Combine(AppContext.BaseDirectory, "flocks");
var maker = new CaseMaker(Samples(folder), Samples(Path.Combine(folder, "bad")), ScreenPack.Make(CaseCheck.Open.Plan, CaseCheck.Open.Name, "{}", null, (_, _, _) => { }).Documents[0].ToPdf().ToArray());
var tallies = Enum.GetValues<CaseKind>().ToDictionary(kind => kind, _ => new Tally());
var failed = 0;
string? kept = null;
var whole = Stopwatch.StartNew();
var (first, end) = only < 0 ? (0, cases) : (only, only + 1);
for (var number = first; number < end; number++)
{
    var (kind, bytes) = maker.Make(seed, number);
    var result = CaseCheck.Run(kind, bytes);
    tallies[kind].Add(number, result);
    if (result.Fault is { } fault)
    {
        failed++;
        kept ??= Directory.CreateTempSubdirectory("paperflock-fuzz-").FullName;
        var file = Path.Combine(kept, $"seed-{seed}-case-{number}.yaml");
        File.WriteAllBytes(file, bytes);
        Console.WriteLine($"FAIL  seed {seed} case {number} ({kind}): {fault}\n      {file}");
    }
}

Console.WriteLine($"{"kind",-8} {"cases",9} {"accepted",9} {"slowest ms",11} {"case",9} {"most MB asked for",18} {"case",9}");
foreach (var (kind, tally) in tallies)
{
    Console.WriteLine(
        $"{kind,-8} {tally.Cases,9} {tally.Accepted,9} {tally.Slowest.TotalMilliseconds,11:0.0} {tally.SlowestCase,9} {tally.Largest / 1048576.0,18:0.0} {tally.LargestCase,9}");
}

using var self = Process.GetCurrentProcess();
var peak = self.PeakWorkingSet64;
Console.WriteLine($"seed {seed}, {end - first} cases in {whole.Elapsed.TotalSeconds:0} s, {failed} failed; peak working set {peak / 1048576.0:0} MB");
if (peak > MostMemory)
{
    Console.WriteLine($"FAIL  more than {MostMemory / 1048576} MB were held at once");
    failed++;
}

return failed == 0 ? 0 : 1;

// In the same order everywhere: the cases hang on it.
static byte[][] Samples(string folder) => [.. Directory.GetFiles(folder, "*.yaml").Order(StringComparer.Ordinal).Select(File.ReadAllBytes)];
