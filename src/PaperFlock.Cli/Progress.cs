using Spectre.Console;

namespace PaperFlock.Cli;

/// <summary>Says what is being done, where somebody is watching; between steps the user may stop the work.</summary>
internal static class Progress
{
    /// <param name="work">Calls its argument with the name of each step as it begins.</param>
    /// <exception cref="OperationCanceledException">The user stopped it.</exception>
    public static T Show<T>(Host host, Func<Action<string>, T> work)
    {
        if (!host.ErrorIsTerminal)
        {
            return work(_ => host.Stop.ThrowIfCancellationRequested());
        }

        return Terminals.ConsoleFor(host.Error)
            .Status()
            .Start(Messages.Composing, status => work(step =>
            {
                host.Stop.ThrowIfCancellationRequested();
                status.Status(Markup.Escape(step));
            }));
    }
}
