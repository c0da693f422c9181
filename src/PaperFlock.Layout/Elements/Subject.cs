namespace PaperFlock.Layout.Elements;

/// <summary>What an element is about, to whoever compares one printing with another. Layout hands it on from an element to the pieces made of it, and knows no more.</summary>
public abstract record Subject;
