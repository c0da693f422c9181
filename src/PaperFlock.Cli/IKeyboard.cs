namespace PaperFlock.Cli;

/// <summary>Keys one by one, unseen until they are written.</summary>
internal interface IKeyboard
{
    /// <exception cref="OperationCanceledException">The user wants the program to end.</exception>
    ConsoleKeyInfo Read(CancellationToken stop);
}

/// <summary>The keyboard of the process's own terminal.</summary>
internal sealed class TerminalKeyboard : IKeyboard
{
    /// <summary>Too short to be felt, and long enough to leave the processor alone.</summary>
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(15);

    public ConsoleKeyInfo Read(CancellationToken stop)
    {
        // Reading itself cannot be interrupted.
        while (!Console.KeyAvailable)
        {
            if (stop.WaitHandle.WaitOne(Look))
            {
                throw new OperationCanceledException(stop);
            }
        }

        return Console.ReadKey(intercept: true);
    }
}
