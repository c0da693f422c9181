using BenchmarkDotNet.Attributes;
using NodaTime;
using PaperFlock.Cli.Files;
using PaperFlock.Cli.Wiring;
using PaperFlock.Flocks;
using PaperFlock.Planning;
using PaperFlock.Sheets;

namespace PaperFlock.Benchmarks;

/// <summary>Each room of the house by itself, fed with what the room before it makes.</summary>
// In this process: building a program for each room would build, and analyse, everything again.
[InProcess]
[MemoryDiagnoser]
public class RoomBenchmarks
{
    private static readonly LocalDate AsOf = BenchFlock.AsOf;
    private readonly Line _line = new();
    private byte[] _file = [];
    private Flock _flock = null!;
    private SeasonPlan _plan = null!;
    private Issue _issue = null!;

    [Params(24, 2000)]
    public int Ewes { get; set; }

    [GlobalSetup]
    public void MakeWhatRoomsNeed()
    {
        _file = BenchFlock.File(Ewes);
        _flock = BenchFlock.Read(_file);
        _plan = _line.Plan(_flock, AsOf);
        _issue = _line.Compose(_plan, PackRequest.Everything, null);
    }

    [Benchmark]
    public object Read() => BenchFlock.Read(_file);

    [Benchmark]
    public object Plan() => _line.Plan(_flock, AsOf);

    [Benchmark]
    public object Compose() => _line.Compose(_plan, PackRequest.Everything, null);

    [Benchmark]
    public long Print() => _issue.Pack.Documents.Select(_line.Print).Sum(pdf => (long)pdf.Length);

    [Benchmark]
    public long Record() => RecordFile.BytesOf(_issue.Composed.Record).Length;
}
