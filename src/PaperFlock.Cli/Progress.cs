using Spectre.Console;

namespace PaperFlock.Cli;

/// <summary>Says what is being done, where somebody is watching; between steps the user may stop the work.</summary>
internal static class Progress
{
    /// <param name="work">Calls its argument with the name of each step as it begins.</param>
    /// <exception cref="OperationCanceledException">The user stopped it.</exception>
    public static T Show<T>(Surroundings surroundings, Func<Action<string>, T> work)
    {
        if (!surroundings.ShowsProgress)
        {
            return work(_ => surroundings.Stop.ThrowIfCancellationRequested());
        }

        return Consoles.For(surroundings.Error)
            .Status()
            .Start(Words.Composing, status => work(step =>
            {
                surroundings.Stop.ThrowIfCancellationRequested();
                status.Status(Markup.Escape(step));
            }));
    }
}
