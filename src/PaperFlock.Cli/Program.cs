using System.Runtime.InteropServices;
using System.Text;
using PaperFlock.Cli;

StandardStreams.FillClosed();
var error = Terminals.IsForPeople(Console.IsErrorRedirected) ? Console.Error : GuardedWriter.Complaints(Console.Error);
// What is thrown where no command can catch it, on another thread or before there is one.
AppDomain.CurrentDomain.UnhandledException += (_, fault) =>
    Environment.Exit(App.Report((Exception)fault.ExceptionObject, args, error, Path.GetTempPath()));

// Names in any script, whatever code page the computer was set up with.
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);

using var stop = new CancellationTokenSource();
using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, StopCleanly);
using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, StopCleanly);
// The terminal's window was closed.
using var hangUp = PosixSignalRegistration.Create(PosixSignal.SIGHUP, StopCleanly);

string folder;
try
{
    folder = Directory.GetCurrentDirectory();
}
catch (Exception e) when (FileTrouble.IsOfFiles(e))
{
    error.WriteLine(Messages.Complaint("the folder you are in is not there any more: go into another one and try again"));
    return ExitStatus.WrongUse;
}

var forPeople = Terminals.IsForPeople(Console.IsOutputRedirected);
return App.Run(
    args,
    new Host(
        // A screen is never full, and the tables want to know that it is one.
        forPeople ? Console.Out : GuardedWriter.Results(Console.Out),
        error,
        SystemClock.Instance,
        folder,
        Path.GetTempPath(),
        OutIsTerminal: forPeople,
        ErrorIsTerminal: Terminals.IsForPeople(Console.IsErrorRedirected),
        stop.Token)
    {
        WaitBeforeClosing = Terminals.WaitBeforeClosing(),
        In = Console.In,
        InIsTerminal = !Console.IsInputRedirected,
        ReadKey = Console.IsInputRedirected || !forPeople ? null : Terminals.ReadKey,
        HomeZone = Terminals.HomeZone,
    });

// The first signal stops the work at the next step, with nothing left behind; a second one ends the program there and then, and so does time:
// it may wait for a pipe into which nothing comes.
void StopCleanly(PosixSignalContext signal)
{
    signal.Cancel = !stop.IsCancellationRequested;
    stop.Cancel();
    _ = Task.Delay(TimeSpan.FromSeconds(10)).ContinueWith(_ => Environment.Exit(ExitStatus.Stopped), TaskScheduler.Default);
}
