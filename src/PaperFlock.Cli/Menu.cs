namespace PaperFlock.Cli;

/// <summary>What somebody sees who double-clicks the program: a choice, in a window that stays until it is closed.</summary>
internal static class Menu
{
    private const string SampleFolder = "paperflock-sample";
    private const string SampleDay = "2026-11-25";

    /// <summary>Asks until Enter alone is pressed, and does what is chosen.</summary>
    /// <returns>The status of what was done last.</returns>
    public static int Run(Host host)
    {
        var status = ExitStatus.Clean;
        while (true)
        {
            host.Out.WriteLine(
                """
                PaperFlock turns one file about your flock into a printed pack for the lambing season.

                  1  open a flock file, and make its pack
                  2  start a flock file
                  3  look at the sample, of an invented flock

                Type 1, 2 or 3 and press Enter. Enter alone closes this window.
                """);
            var chosen = host.Ask("> ");
            host.Out.WriteLine();
            switch (chosen)
            {
                case null or "":
                    return status;
                case "1":
                    status = Open(host) ?? status;
                    break;
                case "2":
                    status = Do(["begin"], dropped: false, host);
                    break;
                case "3":
                    status = Sample(host);
                    break;
                default:
                    // A file dragged onto the window types its name.
                    status = Do([Unquoted(chosen)], dropped: true, host);
                    break;
            }

            host.Out.WriteLine();
        }
    }

    private static int? Open(Host host)
    {
        host.Out.WriteLine("Drag the flock file onto this window, or type its name, and press Enter.");
        return host.Ask("> ") is { Length: > 0 } file ? Do([Unquoted(file)], dropped: true, host) : null;
    }

    private static int Sample(Host host) => App.Guard(["sample"], host, () =>
    {
        var flock = OutputFile.In(SampleFolder, "hollin-bank.yaml", host);
        // What somebody has tried out in it stays.
        if (!File.Exists(flock.Full))
        {
            using var text = typeof(Menu).Assembly.GetManifestResourceStream("sample.yaml")!;
            using var bytes = new MemoryStream();
            text.CopyTo(bytes);
            StagedFiles.Write(flock, bytes.ToArray(), host);
        }

        host.Out.WriteLine($"wrote {flock.Shown}: open it with a text editor to see what a flock file looks like");
        return CommandLine.Run(["pack", flock.Shown, "--as-of", SampleDay], dropped: false, host);
    });

    private static int Do(string[] args, bool dropped, Host host) => App.Guard(args, host, () => CommandLine.Run(args, dropped, host));

    private static string Unquoted(string file) => file.Trim('"', '\'');
}
