using System.Collections.Immutable;
using PaperFlock.Layout.Elements;

namespace PaperFlock.Layout.Pages;

/// <summary>Fills pages with a body until nothing is left of it. The front door of this room.</summary>
public static class Paginator
{
    /// <param name="startsOn">The side of the first page; sides alternate unless <paramref name="singleSided"/>.</param>
    /// <returns>At least one page, page texts resolved, links not checked.</returns>
    /// <exception cref="LayoutException">Something does not fit an empty page.</exception>
    public static ImmutableArray<Page> Paginate(Element body, PageDesign design, LayoutContext context, PageSide startsOn = PageSide.Front, bool singleSided = false)
        => throw new NotSupportedException();
}
