using System.IO.Hashing;
using System.Text;

namespace PaperFlock.Cli.Files;

/// <summary>
/// A file is put in place in one stroke, several are not. Before the first of several is, a note beside them says what each takes the place of, and
/// where that is kept; when the last is in place the note is taken away, and with that the new ones are there for good. A run that fails half-way puts
/// the old ones back; one that is killed leaves the note, and the next run does it.
/// </summary>
internal sealed class UndoNote
{
    private const string First = "PaperFlock was putting files in place and has not come to an end; its next run in this folder puts these back";
    private const string Last = "end";

    /// <summary>No name of a file can hold it.</summary>
    private const char Between = '\0';

    private readonly string _folder;
    private readonly List<(string Target, string? Kept, string Fingerprint)> _files = [];

    /// <param name="folder">Full path of the folder the note is put into: that of the targets, or one above.</param>
    public UndoNote(string folder) => _folder = folder;

    private string Place => Path.Combine(_folder, TempFiles.NoteName);

    /// <summary>Keeps what a file takes the place of, under a second name beside it.</summary>
    /// <param name="target">Full path.</param>
    /// <exception cref="IOException">It cannot be kept; nothing has been changed.</exception>
    public void Keep(string target, ReadOnlySpan<byte> content)
    {
        string? kept = null;
        if (IsThere(target))
        {
            kept = TempFiles.NewName(Path.GetDirectoryName(target)!);
            if (MustCopy(kept) || !UnixFiles.TryLink(target, kept))
            {
                Copy(target, kept);
            }
        }

        _files.Add((target, kept, Convert.ToHexString(XxHash128.Hash(content))));
    }

    /// <summary>From here on the old files are put back, if not by this run then by the next.</summary>
    public void Write()
    {
        var parts = _files.SelectMany(f => new[] { Path.GetRelativePath(_folder, f.Target), f.Kept is null ? "" : Path.GetFileName(f.Kept), f.Fingerprint });
        // Never through a link that somebody has put there.
        File.Delete(Place);
        using var note = new FileStream(Place, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        note.Write(Encoding.UTF8.GetBytes(string.Join(Between, [First, .. parts, Last])));
        note.Flush(flushToDisk: true);
    }

    /// <summary>The new files are there for good, or none has been moved yet.</summary>
    public void Drop()
    {
        File.Delete(Place);
        foreach (var (_, kept, _) in _files)
        {
            if (kept is not null)
            {
                TempFiles.Quietly(() => File.Delete(kept));
            }
        }
    }

    /// <summary>Does what the note of a run that was cut short says; nothing where there is none.</summary>
    /// <param name="folder">Full path of a folder in which no run is at work.</param>
    /// <exception cref="IOException">A file cannot be put back; the note stays.</exception>
    public static void Follow(string folder)
    {
        if (File.Exists(Path.Combine(folder, TempFiles.NoteName)))
        {
            Read(folder).PutBack();
        }
    }

    /// <summary>Puts back what has been replaced, and takes away what has been added.</summary>
    /// <exception cref="IOException">A file cannot be put back; the note stays.</exception>
    public void PutBack()
    {
        // The record is moved last, so it is put back first: with it alone a later run of changed leaves knows what was printed.
        foreach (var (target, kept, fingerprint) in Enumerable.Reverse(_files))
        {
            if (!Says(target, fingerprint))
            {
                // It was not yet moved, or is somebody else's by now.
                continue;
            }

            if (kept is null)
            {
                File.Delete(target);
            }
            else if (IsThere(kept) && !Says(kept, fingerprint))
            {
                File.Move(kept, target, overwrite: true);
            }
        }

        Drop();
    }

    /// <returns>Of no files when it was not written to its end: then none had been moved.</returns>
    private static UndoNote Read(string folder)
    {
        var note = new UndoNote(folder);
        var parts = File.ReadAllText(note.Place).Split(Between);
        if (parts.Length % 3 != 2 || parts[0] != First || parts[^1] != Last)
        {
            return note;
        }

        foreach (var part in parts[1..^1].Chunk(3))
        {
            var target = Path.GetFullPath(Path.Combine(folder, part[0]));
            // A note is a file like any other: whatever it says, nothing outside its folder is touched, and nothing is taken that we did not put there.
            if (target.StartsWith(Path.Join(folder, "/"), StringComparison.Ordinal) || target.StartsWith(Path.Join(folder, "\\"), StringComparison.Ordinal))
            {
                var kept = part[1].Length == 0 ? null : Path.Combine(Path.GetDirectoryName(target)!, part[1]);
                if (kept is null || TempFiles.IsOurs(part[1]))
                {
                    note._files.Add((target, kept, part[2]));
                }
            }
        }

        return note;
    }

    /// <summary>A second name is another's file if the first was; in a folder such as /tmp that could never be taken away again.</summary>
    private static bool MustCopy(string kept) =>
        OperatingSystem.IsWindows() || File.GetUnixFileMode(Path.GetDirectoryName(kept)!).HasFlag(UnixFileMode.StickyBit);

    /// <summary>A link counts, even to nothing.</summary>
    private static bool IsThere(string file) => Path.Exists(file) || new FileInfo(file).LinkTarget is not null;

    /// <summary>A pipe would say nothing, and for ever.</summary>
    private static bool Says(string file, string fingerprint) =>
        new FileInfo(file) is { Exists: true, Length: > 0 } && Convert.ToHexString(XxHash128.Hash(File.ReadAllBytes(file))) == fingerprint;

    private static void Copy(string file, string second)
    {
        File.Copy(file, second);
        using var copy = new FileStream(second, FileMode.Open, FileAccess.Write, FileShare.None);
        copy.Flush(flushToDisk: true);
    }
}
