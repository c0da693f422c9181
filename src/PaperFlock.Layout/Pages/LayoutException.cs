namespace PaperFlock.Layout.Pages;

/// <summary>Something cannot fit even an empty page.</summary>
public sealed class LayoutException(string reason, ImmutableArray<string> path)
    : Exception(path.IsEmpty ? reason : $"{string.Join(" > ", path)}: {reason}")
{
    /// <summary>One sentence with the space needed and the space there is.</summary>
    public string Reason { get; } = reason;

    /// <summary>Names of the elements from the outside in.</summary>
    public ImmutableArray<string> Path { get; } = path;
}
