namespace PaperFlock.Flocks;

/// <param name="On">The first day she is no longer in the flock.</param>
public sealed record Loss(LocalDate On, LossReason Why);

public enum LossReason
{
    Died,
    Sold,
    Culled,
    Missing,
}
