using System.Diagnostics;

namespace PaperFlock.Faults;

/// <summary>What was done to the program, and how the packs came through it.</summary>
internal sealed class Attacks
{
    private const string Before = "2026-11-25";
    private const string After = "2026-12-03";

    private static readonly int[] Polite = [Signals.HangUp, Signals.Interrupt, Signals.Terminate];

    private readonly string _root;
    private readonly string _program;
    private readonly Random _random;
    private readonly Tally _tally;
    private readonly Pack _old;
    private readonly Pack _next;
    private readonly string[] _make;
    private readonly string _remembering;
    private readonly TimeSpan _whole;

    /// <param name="more">Further options of every pack.</param>
    public Attacks(string root, string program, Random random, Tally tally, params string[] more)
    {
        (_root, _program, _random, _tally) = (root, program, random, tally);
        _make = ["pack", Pack.Flock, .. more, "--as-of"];
        _remembering = more.Contains("--split") ? "flock-binder.pdf" : "flock.pdf";
        var flock = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "flocks", "smallest.yaml"));
        (_old, _next) = (New("old"), New("next"));
        _old.Write(flock);
        Must(_old.Run([.. _make, Before]));
        // A ewe has got a name since: her card, her row and more say something else.
        _old.Write(flock.TrimEnd() + "\n    name: Bracken\n");
        _next.BecomeCopyOf(_old);
        var watch = Stopwatch.StartNew();
        Must(_next.Run([.. _make, After]));
        _whole = watch.Elapsed;
    }

    /// <summary>Killed outright: any time, or as soon as something stirs in the folder.</summary>
    public void Kill(int round)
    {
        var pack = New("kill");
        pack.BecomeCopyOf(_old);
        using var process = pack.Start([.. _make, After]);
        Wait(process, pack, (Moment)(round / 2 % 3));
        Signals.Send(process, Signals.Kill);
        var (status, _) = Pack.End(process);
        var (state, litter) = (pack.State(), pack.HasLitter);
        if (!pack.IsEachOf(_old, _next))
        {
            _tally.Lose($"round {round}: a file that is neither the old one nor the new one");
            return;
        }

        // Only the pack itself remembers its issue: the next run must not take the old one for the new.
        var (isOld, isNext) = (state == _old.State(), state == _next.State());
        var (_, said) = pack.Run([.. _make, After, "--changed", "--dry-run"]);
        if (!said.Contains(pack.Holds(_next, _remembering) ? "nothing has changed since issue 2" : "issue 2 would be", StringComparison.Ordinal))
        {
            _tally.Lose($"round {round}: the next run took the pack for another: {said}");
        }

        Must(pack.Run([.. _make, After]));
        if (pack.State() != _next.State())
        {
            _tally.Lose($"round {round}: another pack than the new one after the next run");
        }
        else if (pack.HasLitter)
        {
            _tally.Lose($"round {round}: litter after the next run");
        }

        _tally.Count(status == 0 ? "kill: came too late" : $"kill: {(isOld ? "old pack" : isNext ? "new pack" : "old and new files, each whole")}{(litter ? ", with litter swept by the next run" : "")}");
    }

    /// <summary>Asked to stop.</summary>
    public void Stop(int round)
    {
        var signal = Polite[round % Polite.Length];
        var pack = New("stop");
        pack.BecomeCopyOf(_old);
        using var process = pack.Start([.. _make, After]);
        Wait(process, pack, (Moment)_random.Next(3));
        Signals.Send(process, signal);
        var (status, said) = Pack.End(process);
        var state = pack.State();
        if (pack.HasLitter || (state != _old.State() && state != _next.State()))
        {
            _tally.Lose($"round {round}: signal {signal} left something half done: {said}");
        }

        // Before the program has begun, and when it has done, it is the runtime that is asked, and ends in its own way: by the signal itself, which is 130 for an interrupt too, without a word.
        var isRight = status switch { 0 => state == _next.State(), 130 => state == _old.State() && (said.Length == 0 || said.Contains("nothing was written", StringComparison.Ordinal)), _ => status > 128 };
        if (!isRight)
        {
            _tally.Lose($"round {round}: signal {signal} gave status {status} and another pack than that says: {said}");
        }

        _tally.Count(state == _next.State() ? "stop: pack made all the same" : "stop: old pack");
    }

    /// <summary>Two flocks of one name, packed into one folder at once: each file is one of them, whole.</summary>
    public void Together(int round)
    {
        var (one, other, into) = (New("one"), New("other"), New("together"));
        one.BecomeCopyOf(_old);
        other.BecomeCopyOf(_old);
        other.Write(File.ReadAllText(Path.Combine(_old.Folder, Pack.Flock)) + "    note: Quiet\n");
        // By itself, or after the other.
        var mayBe = new[] { new[] { one }, [other], [one, other], [other, one] }.Select((order, i) =>
        {
            var serial = New($"serial-{i}");
            serial.Empty();
            foreach (var pack in order)
            {
                Must(pack.Run([.. _make, Before, "--out", serial.Folder]));
            }

            return serial;
        }).ToArray();

        into.Empty();
        using var first = one.Start([.. _make, Before, "--out", into.Folder]);
        Thread.Sleep(_random.Next(0, 60));
        using var second = other.Start([.. _make, Before, "--out", into.Folder]);
        var (a, b) = (Pack.End(first), Pack.End(second));
        if (a.Status != 0 || b.Status != 0)
        {
            _tally.Lose($"round {round}: one of two at once failed: {a.Said}{b.Said}");
        }

        if (!into.IsEachOf(mayBe) || into.HasLitter)
        {
            _tally.Lose($"round {round}: two at once made a file that neither of them makes alone, or left litter");
        }

        _tally.Count("two at once");
    }

    /// <summary>On a disk of its own with too little room: more and more of it from round to round.</summary>
    /// <returns>False where this user may not make such a disk.</returns>
    public bool FullDisk(int round)
    {
        var disk = Path.Combine(_root, "disk");
        Directory.CreateDirectory(disk);
        if (!OnItsOwn("mount", "-t", "tmpfs", "-o", $"size={(round * 37 % 1400) + 560}k", "none", disk))
        {
            return false;
        }

        try
        {
            var pack = new Pack(Path.Combine(disk, "pack"), _program);
            pack.BecomeCopyOf(_old);
            var (status, said) = pack.Run([.. _make, After]);
            var isRight = status switch
            {
                0 => pack.State() == _next.State(),
                2 => pack.State() == _old.State() && said.Contains("the disk is full", StringComparison.Ordinal),
                _ => false,
            };
            if (!isRight || pack.HasLitter)
            {
                _tally.Lose($"round {round}: a full disk gave status {status}: {said}");
            }

            _tally.Count(status == 0 ? "full disk: had room after all" : "full disk: old pack");
            return true;
        }
        catch (IOException)
        {
            // Not even the old pack fits.
            return true;
        }
        finally
        {
            OnItsOwn("umount", disk);
        }
    }

    private void Wait(Process process, Pack pack, Moment moment)
    {
        if (moment == Moment.Any)
        {
            Thread.Sleep(TimeSpan.FromMilliseconds(_random.NextDouble() * 1.1 * _whole.TotalMilliseconds));
            return;
        }

        while (!process.HasExited && pack.Litter < (moment == Moment.Writing ? 1 : _old.Files.Count))
        {
            Thread.SpinWait(20);
        }

        // Writing takes as long as the disk does, moving next to no time.
        var most = moment == Moment.Writing ? 0.012 : 0.0015;
        var (ticks, since) = (_random.NextDouble() * most * Stopwatch.Frequency, Stopwatch.GetTimestamp());
        while (Stopwatch.GetTimestamp() - since < ticks)
        {
            Thread.SpinWait(20);
        }
    }

    private enum Moment
    {
        /// <summary>From the start of the program to shortly after its end.</summary>
        Any,

        /// <summary>From the first file written beside its target.</summary>
        Writing,

        /// <summary>From when all of them are written, and are about to be moved into place.</summary>
        Moving,
    }

    private Pack New(string name) => new(Path.Combine(_root, name), _program);

    private static bool OnItsOwn(string command, params string[] args)
    {
        using var process = Process.Start(new ProcessStartInfo(command, args) { RedirectStandardError = true })!;
        process.WaitForExit();
        return process.ExitCode == 0;
    }

    private static void Must((int Status, string Said) run)
    {
        if (run.Status != 0)
        {
            throw new InvalidOperationException(run.Said);
        }
    }
}
