using System.Runtime.InteropServices;
using System.Text;
using NodaTime;
using PaperFlock.Cli;
using PaperFlock.Cli.Files;
using PaperFlock.Cli.Wiring;

// Names in any script, whatever code page the computer was set up with.
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);

using var stop = new CancellationTokenSource();
using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, StopCleanly);
using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, StopCleanly);

var forPeople = Terminals.IsForPeople(Console.IsOutputRedirected);
return App.Run(
    args,
    new Surroundings(
        // A screen is never full, and the tables want to know that it is one.
        forPeople ? Console.Out : new CheckedWriter(Console.Out),
        Terminals.IsForPeople(Console.IsErrorRedirected) ? Console.Error : new HushedWriter(Console.Error),
        SystemClock.Instance,
        Directory.GetCurrentDirectory(),
        Path.GetTempPath(),
        OutIsTerminal: forPeople,
        ErrorIsTerminal: Terminals.IsForPeople(Console.IsErrorRedirected),
        stop.Token)
    {
        WaitBeforeClosing = OwnWindow.Waiting(),
        In = Console.In,
        InIsTerminal = !Console.IsInputRedirected,
        Keyboard = Console.IsInputRedirected || !Terminals.IsForPeople(Console.IsOutputRedirected) ? null : new TerminalKeyboard(),
        HomeZone = Terminals.HomeZone,
    },
    new Line());

// The first signal stops the work at the next step, with nothing left behind; a second one ends the program there and then.
void StopCleanly(PosixSignalContext signal)
{
    signal.Cancel = !stop.IsCancellationRequested;
    stop.Cancel();
}
