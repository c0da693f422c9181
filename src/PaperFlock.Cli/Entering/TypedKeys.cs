namespace PaperFlock.Cli.Entering;

/// <summary>Keys as they are pressed: an answer ends with the key that makes it whole, or with Enter.</summary>
internal sealed class TypedKeys(Func<CancellationToken, ConsoleKeyInfo> readKey, TextWriter screen, CancellationToken stop) : ITyping
{
    public bool CanAskAgain => true;

    public int Count { get; private set; }

    public string? Read(Func<string, bool> isWhole)
    {
        var typed = "";
        while (true)
        {
            var key = readKey(stop);
            switch (key.Key)
            {
                case ConsoleKey.Enter:
                    return Done(typed);
                case ConsoleKey.D when key.Modifiers.HasFlag(ConsoleModifiers.Control) && typed.Length == 0:
                    return null;
                case ConsoleKey.LeftArrow or ConsoleKey.UpArrow or ConsoleKey.Backspace when typed.Length == 0:
                    return Done("<");
                case ConsoleKey.Backspace:
                    typed = typed[..^1];
                    screen.Write("\b \b");
                    screen.Flush();
                    break;
                case ConsoleKey.Escape:
                    screen.Write(string.Concat(Enumerable.Repeat("\b \b", typed.Length)));
                    screen.Flush();
                    typed = "";
                    break;
                default:
                    if (char.IsControl(key.KeyChar))
                    {
                        break;
                    }

                    typed += key.KeyChar;
                    screen.Write(key.KeyChar);
                    screen.Flush();
                    if (typed is "<" or "?" or "q" || isWhole(typed))
                    {
                        return Done(typed);
                    }

                    break;
            }
        }

        string Done(string answer)
        {
            Count++;
            screen.WriteLine();
            return answer.Trim();
        }
    }
}
