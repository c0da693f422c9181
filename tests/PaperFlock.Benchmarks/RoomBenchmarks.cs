using BenchmarkDotNet.Attributes;
using NodaTime;
using PaperFlock.Flocks;
using PaperFlock.Packs;
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
    private byte[] _file = [];
    private Flock _flock = null!;
    private SeasonPlan _plan = null!;
    private Pack _pack = null!;

    [Params(24, 2000)]
    public int Ewes { get; set; }

    [GlobalSetup]
    public void MakeWhatRoomsNeed()
    {
        _file = BenchFlock.File(Ewes);
        _flock = BenchFlock.Read(_file);
        _plan = SeasonPlanner.Plan(_flock, AsOf);
        _pack = PackMaker.Make(_plan, PackRequest.Everything, before: null);
    }

    [Benchmark]
    public object Read() => BenchFlock.Read(_file);

    [Benchmark]
    public object Plan() => SeasonPlanner.Plan(_flock, AsOf);

    [Benchmark]
    public object Compose() => PackMaker.Make(_plan, PackRequest.Everything, before: null);

    [Benchmark]
    public long Print() => _pack.Documents.Sum(d => (long)d.ToPdf().Length);
}
