using NodaTime;
using PaperFlock.Layout.Pages;
using PaperFlock.Packs;
using PaperFlock.Planning;
using PaperFlock.Sheets;

namespace PaperFlock.Benchmarks;

/// <summary>The pages of a pack as a flat list of what is drawn on each, for those who draw and do not lay out.</summary>
/// <param name="Documents">Pages of the pack, then of the planner in one piece.</param>
internal sealed record PackPages(ImmutableArray<ImmutableArray<Page>> Documents)
{
    public IEnumerable<Page> All => Documents.SelectMany(d => d);

    public int Count => Documents.Sum(d => d.Length);

    /// <summary>All items in the page's own coordinates. Text that does not read from left to right is alone in a turned piece.</summary>
    public int Items => All.Sum(p => p.Content.Items.Length);

    public static PackPages Of(int ewes, LocalDate asOf)
    {
        var plan = SeasonPlanner.Plan(BenchFlock.Read(BenchFlock.File(ewes)), asOf);
        var pack = PackMaker.Make(plan, PackRequest.Everything, before: null);
        return new PackPages([.. pack.Documents.Select(d => d.Print.Pages.Select(p => Flat(p.Page)).ToImmutableArray())]);
    }

    private static Page Flat(Page page) => page with { Content = page.Content.Flatten() };
}
