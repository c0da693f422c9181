using PaperFlock.Faults;

// Ends with 0 when nothing was lost, 1 when something was, 2 when asked for what it cannot do.
var (times, seed, program) = (100, 1, Path.Combine(AppContext.BaseDirectory, "paperflock.dll"));
for (var i = 0; i < args.Length; i += 2)
{
    var value = i + 1 < args.Length ? args[i + 1] : "";
    var number = int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : -1;
    switch (args[i])
    {
        case "--times" when number >= 0:
            times = number;
            break;
        case "--seed" when number >= 0:
            seed = number;
            break;
        case "--program" when File.Exists(value):
            program = Path.GetFullPath(value);
            break;
        default:
            Console.Error.WriteLine("usage: PaperFlock.Faults [--times KILLS] [--seed NUMBER] [--program PAPERFLOCK]");
            return 2;
    }
}

// A kill is the rudest and there are most of them; of four, one signal, one full disk, and of eight one pair of runs.
var root = Directory.CreateTempSubdirectory("paperflock-faults-").FullName;
var tally = new Tally();
var random = new Random(seed);
var whole = new Attacks(Path.Combine(root, "whole"), program, random, tally);
// Six documents: more to be moved, and so more to be caught half-way.
var split = new Attacks(Path.Combine(root, "split"), program, random, tally, "--split");
var disks = true;
for (var round = 0; round < times; round++)
{
    var attacks = round % 2 == 0 ? whole : split;
    attacks.Kill(round);
    if (round % 4 == 0)
    {
        whole.Stop(round / 4);
        disks = disks && whole.FullDisk(round / 4);
    }

    if (round % 8 == 0)
    {
        split.Together(round / 8);
    }
}

tally.Write();
if (!disks)
{
    Console.WriteLine("no full disks: making one takes a user who may mount");
}

Console.WriteLine($"seed {seed}: {tally.All} faults injected, {tally.Lost} lost");
Directory.Delete(root, recursive: true);
return tally.Lost == 0 ? 0 : 1;
