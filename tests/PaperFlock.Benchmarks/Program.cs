using BenchmarkDotNet.Running;
using PaperFlock.Benchmarks;
using PaperFlock.Benchmarks.Beside;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
switch (args)
{
    case ["rooms", .. var options]:
        BenchmarkSwitcher.FromAssembly(typeof(RoomBenchmarks).Assembly).Run(options.Length == 0 ? ["--filter", "*"] : options);
        return 0;
    case ["beside", var ewes, var runs, .. var folders]:
        SideBySide.Run(Number(ewes), Number(runs), folders.ElementAtOrDefault(0), folders.ElementAtOrDefault(1));
        return 0;
    case ["steps", var ewes, var runs]:
        OurLine.Show(BenchFlock.File(Number(ewes)), Number(runs));
        return 0;
    case ["doubling", var folder, var runs]:
        Doubling.Run(WholeProgram.In(folder), Number(runs));
        return 0;
    case ["program", var folder, var runs]:
        WholeProgram.Run(folder, Number(runs));
        return 0;
    case ["sizes", var folder]:
        Sizes.Run(WholeProgram.In(folder));
        return 0;
    case ["flock", var ewes, .. { Length: 0 or 2 } more]:
        using (var output = Console.OpenStandardOutput())
        {
            output.Write(more is [var groups, var jobs] ? BenchFlock.File(Number(ewes), Number(groups), Number(jobs)) : BenchFlock.File(Number(ewes)));
        }

        return 0;
    default:
        Console.Error.WriteLine(
            """
            usage: PaperFlock.Benchmarks rooms [OPTIONS]          each room by itself; options are those of BenchmarkDotNet
                   PaperFlock.Benchmarks steps EWES RUNS          milliseconds of each step of the line
                   PaperFlock.Benchmarks beside EWES RUNS [FOLDER [KEEP]]
                                                                  beside SkiaSharp alone, and beside Typst and Chromium where FOLDER holds what others.sh installed
                   PaperFlock.Benchmarks doubling FOLDER RUNS     the program published into FOLDER, with 500, 1,000, 2,000 and 4,000 ewes
                   PaperFlock.Benchmarks program FOLDER RUNS      the program published into FOLDER, beside an empty one
                   PaperFlock.Benchmarks sizes FOLDER             the same program, and flocks from 1 to 3,000 ewes
                   PaperFlock.Benchmarks flock EWES [GROUPS JOBS] writes such a flock file
            """);
        return 2;
}

static int Number(string text) => int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);
