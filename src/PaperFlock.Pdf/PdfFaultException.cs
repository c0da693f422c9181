namespace PaperFlock.Pdf;

/// <summary>A document that is not what its PDF would say of itself. Nothing of it has been written.</summary>
public sealed class PdfFaultException(ImmutableArray<PdfFault> faults) : Exception(string.Join('\n', faults))
{
    /// <summary>All that is wrong with it, in page order within each kind.</summary>
    public ImmutableArray<PdfFault> Faults { get; } = faults;
}
