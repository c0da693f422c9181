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
    private readonly TimeSpan _whole;

    /// <param name="more">Further options of every pack.</param>
    public Attacks(string root, string program, Random random, Tally tally, params string[] more)
    {
        (_root, _program, _random, _tally) = (root, program, random, tally);
        _make = ["pack", Pack.Flock, .. more, "--as-of"];
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
        var isHalf = state != _old.State() && state != _next.State();
        if (isHalf && !litter)
        {
            _tally.Lose($"round {round}: a mixture of two packs, and nothing to put it right by");
            return;
        }

        // The next run must know what has been printed; it also sweeps up.
        var (_, said) = pack.Run([.. _make, After, "--changed", "--dry-run"]);
        state = pack.State();
        var (isOld, isNext) = (state == _old.State(), state == _next.State());
        if (!isOld && !isNext)
        {
            _tally.Lose($"round {round}: neither the old pack nor the new one after the next run");
        }
        else if (pack.HasLitter)
        {
            _tally.Lose($"round {round}: litter after the next run");
        }
        else if (!said.Contains(isOld ? "issue 2 would be" : "nothing has changed since issue 2", StringComparison.Ordinal))
        {
            _tally.Lose($"round {round}: the next run took the pack for another: {said}");
        }

        _tally.Count(status == 0 ? "kill: came too late" : isHalf ? "kill: half-way, put right by the next run" : litter ? "kill: with litter, swept by the next run" : isOld ? "kill: old pack" : "kill: new pack");
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

        // Before the program has begun, and when it has done, it is the runtime that is asked, and ends in its own way.
        var isRight = status switch { 0 => state == _next.State(), 130 => state == _old.State() && said.Contains("nothing was written", StringComparison.Ordinal), _ => status > 128 };
        if (!isRight)
        {
            _tally.Lose($"round {round}: signal {signal} gave status {status} and another pack than that says: {said}");
        }

        _tally.Count(state == _next.State() ? "stop: pack made all the same" : "stop: old pack");
    }

    /// <summary>Two flocks of one name, packed into one folder at once.</summary>
    public void Together(int round)
    {
        var (one, other, into) = (New("one"), New("other"), Path.Combine(_root, "together"));
        one.BecomeCopyOf(_old);
        other.BecomeCopyOf(_old);
        other.Write(File.ReadAllText(Path.Combine(_old.Folder, Pack.Flock)) + "    note: Quiet\n");
        var mayBe = new[] { (one, other), (other, one) }.Select(order =>
        {
            var serial = Path.Combine(_root, "serial");
            Must(order.Item1.Run([.. _make, Before, "--out", serial]));
            Must(order.Item2.Run([.. _make, Before, "--out", serial]));
            return Take(serial);
        }).ToList();

        using var first = one.Start([.. _make, Before, "--out", into]);
        Thread.Sleep(_random.Next(0, 60));
        using var second = other.Start([.. _make, Before, "--out", into]);
        var (a, b) = (Pack.End(first), Pack.End(second));
        if (a.Status != 0 || b.Status != 0)
        {
            _tally.Lose($"round {round}: one of two at once failed: {a.Said}{b.Said}");
        }

        var state = Take(into);
        if (!mayBe.Contains(state))
        {
            _tally.Lose($"round {round}: two at once made neither of what they make one after the other");
        }

        _tally.Count("two at once");

        string Take(string folder)
        {
            var pack = new Pack(folder, _program);
            var taken = pack.State() + (pack.HasLitter ? " and litter" : "");
            Directory.Delete(folder, recursive: true);
            return taken;
        }
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

        while (!process.HasExited && !(moment == Moment.Writing ? pack.HasLitter : pack.IsMoving))
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

        /// <summary>From when files are about to be moved into place.</summary>
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
