namespace PaperFlock.Packs;

/// <summary>What was asked for cannot be had of this flock.</summary>
/// <param name="message">One sentence for the user, lower case, no full stop.</param>
public class PackRequestException(string message) : Exception(message);
