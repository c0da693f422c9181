namespace PaperFlock.Layout.Pages;

/// <summary>Something cannot fit even an empty page.</summary>
/// <param name="reason">One sentence with the space needed and the space there is.</param>
/// <param name="path">Names of the elements from the outside in.</param>
public sealed class LayoutException(string reason, ImmutableArray<string> path)
    : Exception(path.IsEmpty ? reason : $"{string.Join(" > ", path)}: {reason}");
