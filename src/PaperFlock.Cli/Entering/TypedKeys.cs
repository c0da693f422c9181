namespace PaperFlock.Cli.Entering;

/// <summary>Keys as they are pressed: nothing is an answer before Enter or an arrow ends it.</summary>
internal sealed class TypedKeys(Func<CancellationToken, ConsoleKeyInfo> readKey, TextWriter screen, CancellationToken stop) : ITyping
{
    public bool CanAskAgain => true;

    public int Count { get; private set; }

    public Typed? Read()
    {
        var typed = "";
        while (true)
        {
            var key = readKey(stop);
            switch (key.Key)
            {
                case ConsoleKey.Enter:
                    return Done(Ending.Enter);
                case ConsoleKey.DownArrow:
                    return Done(Ending.Down);
                case ConsoleKey.UpArrow:
                    return Done(Ending.Up);
                case ConsoleKey.D when key.Modifiers.HasFlag(ConsoleModifiers.Control) && typed.Length == 0:
                    return null;
                case ConsoleKey.Backspace when typed.Length > 0:
                    typed = typed[..^1];
                    Show("\b \b");
                    break;
                case ConsoleKey.Escape:
                    Show(string.Concat(Enumerable.Repeat("\b \b", typed.Length)));
                    typed = "";
                    break;
                default:
                    if (!char.IsControl(key.KeyChar))
                    {
                        typed += key.KeyChar;
                        Show(key.KeyChar.ToString());
                    }

                    break;
            }
        }

        Typed Done(Ending ending)
        {
            Count++;
            screen.WriteLine();
            return new Typed(typed.Trim(), ending);
        }
    }

    private void Show(string text)
    {
        screen.Write(text);
        screen.Flush();
    }
}
