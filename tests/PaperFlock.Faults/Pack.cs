using System.Diagnostics;
using System.Security.Cryptography;

namespace PaperFlock.Faults;

/// <summary>A folder with a flock and the packs of it, and the program to run there.</summary>
/// <param name="program">The program's own path; one that ends in <c>.dll</c> is run by <c>dotnet</c>.</param>
internal sealed class Pack(string folder, string program)
{
    public const string Flock = "flock.yaml";

    public string Folder => folder;

    public void Write(string flock)
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, Flock), flock);
    }

    /// <summary>Nothing of an earlier round is left in it.</summary>
    public void BecomeCopyOf(Pack other)
    {
        Empty();
        foreach (var file in Directory.EnumerateFiles(other.Folder))
        {
            File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
        }
    }

    public Process Start(params string[] args)
    {
        string[] command = program.EndsWith(".dll", StringComparison.Ordinal) ? ["dotnet", program, .. args] : [program, .. args];
        var process = Process.Start(new ProcessStartInfo(command[0], command[1..])
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        // Nobody reads them before it ends, and it says less than a pipe holds.
        return process;
    }

    /// <returns>Its status, and all it said.</returns>
    public (int Status, string Said) Run(params string[] args)
    {
        using var process = Start(args);
        return End(process);
    }

    public static (int Status, string Said) End(Process process)
    {
        var said = process.StandardOutput.ReadToEnd() + process.StandardError.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, said);
    }

    /// <summary>Temporary files of a run that is at work, or was killed.</summary>
    public int Litter => Directory.EnumerateFiles(folder, ".paperflock-*").Count();

    public bool HasLitter => Litter > 0;

    /// <summary>Every file but hidden ones and the flock, with its content: two packs that give the same are the same.</summary>
    public SortedDictionary<string, string> Files => new(
        Directory.EnumerateFiles(folder).Select(f => Path.GetFileName(f)).Where(n => n[0] != '.' && n != Flock)
            .ToDictionary(name => name, name => Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(Path.Combine(folder, name))))),
        StringComparer.Ordinal);

    public string State() => string.Join('\n', Files.Select(f => $"{f.Key} {f.Value}"));

    /// <summary>Whether every file is that of one of the packs, though not all need be of the same.</summary>
    public bool IsEachOf(params Pack[] packs)
    {
        var (mine, others) = (Files, packs.Select(p => p.Files).ToList());
        return mine.Keys.SequenceEqual(others[0].Keys) && mine.All(f => others.Exists(o => o[f.Key] == f.Value));
    }

    public bool Holds(Pack other, string file) => Files[file] == other.Files[file];

    public void Empty()
    {
        if (Directory.Exists(folder))
        {
            Directory.Delete(folder, recursive: true);
        }

        Directory.CreateDirectory(folder);
    }
}
