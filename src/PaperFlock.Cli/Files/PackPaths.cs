namespace PaperFlock.Cli.Files;

/// <summary>Where the files made of a flock go: into one folder, with the name of the flock file before what each is.</summary>
/// <param name="flock">The flock file, as typed.</param>
/// <param name="folder">As typed; null for the folder the flock file is in.</param>
internal sealed class PackPaths(string flock, string? folder, Host host)
{
    public const string Pdf = ".pdf";

    /// <summary>What follows the flock's name in the name of the folder of pictures.</summary>
    public const string Pages = "-pages";

    private readonly string _folder = folder ?? FolderOf(flock);
    private readonly string _name = PackFileNames.Of(flock);

    /// <summary>The flock file, as typed.</summary>
    public string Flock => flock;

    /// <summary>Where earlier issues are looked for, as somebody says it.</summary>
    public string Where => _folder == FolderOf(flock) ? $"beside {flock}" : $"in {_folder} or beside {flock}";

    /// <param name="ending">What follows the flock's name, such as <c>.ics</c>.</param>
    /// <exception cref="UsageException">The folder is a file, or the flock file would be written over.</exception>
    public OutputFile Of(string ending)
    {
        var file = In(ending);
        // Case may not count on this disk, and nothing is worth losing the only input.
        return string.Equals(file.Full, host.FullPath(flock), StringComparison.OrdinalIgnoreCase)
            ? throw new UsageException(Messages.CannotWrite(file.Shown, "that is your flock file"))
            : file;
    }

    public OutputFile Of(PackDocument document) => Of(document.Suffix + Pdf);

    /// <param name="name">Of a page's picture.</param>
    public OutputFile Picture(string name) => OutputFile.In(Of(Pages).Shown, name, host);

    /// <summary>Files that may remember what has been printed, where the pack goes and beside the flock file; each is read when its turn comes.</summary>
    /// <exception cref="UsageException">A folder may not be looked into, or a file cannot be read.</exception>
    public IEnumerable<EarlierFile> Earlier() => new[] { _folder, FolderOf(flock) }.DistinctBy(host.FullPath).SelectMany(EarlierIn);

    /// <summary>A file of a pack that was named.</summary>
    /// <param name="path">As typed.</param>
    /// <exception cref="UsageException">There is none, or it cannot be read.</exception>
    public static EarlierFile Earlier(string path, Host host) => new(path, InputFile.Read(path, host, EarlierFile.MostBytes + 1));

    /// <summary>What is there and does not belong to that holding is left alone.</summary>
    /// <param name="whyNot">What a file with such bytes in it is, to follow its name; null for one that may be replaced. One too large or too small to be ours comes as no bytes.</param>
    /// <exception cref="UsageException">It is something else, or of another holding.</exception>
    public static void RefuseToReplace(OutputFile file, Func<byte[], string?> whyNot, Host host)
    {
        // Where there is a link, it is the link that is replaced, and nothing is lost. What is empty may be a pipe or a device, which would keep us waiting.
        if (new FileInfo(file.Full) is { Exists: true, LinkTarget: null, Length: var length }
            && whyNot(length is 0 or > EarlierFile.MostBytes ? [] : InputFile.Read(file.Shown, host, EarlierFile.MostBytes + 1)) is { } what)
        {
            throw new UsageException($"{file.Shown} {what}; nothing was written: move it away, choose another folder with --out, or type --overwrite to replace it");
        }
    }

    /// <summary>Two flocks whose packs would have one name: the second would be written over the first.</summary>
    /// <param name="suffixes">All that may follow a flock's name in the name of a document.</param>
    /// <exception cref="UsageException">There are such; every pair is named.</exception>
    public static void RefuseClashes(IEnumerable<PackPaths> packs, IReadOnlyList<string> suffixes)
    {
        // Case may not count on this disk.
        var taken = new Dictionary<string, PackPaths>(StringComparer.OrdinalIgnoreCase);
        var clashes = new List<string>();
        foreach (var pack in packs)
        {
            var files = suffixes.Select(s => pack.In(s + Pdf)).ToList();
            if (files.FirstOrDefault(f => taken.ContainsKey(f.Full)) is { Full: not null } clash)
            {
                clashes.Add($"{taken[clash.Full].Flock} and {pack.Flock} would both be written to {clash.Shown}: give one of them another name; nothing was written");
            }

            files.ForEach(f => taken.TryAdd(f.Full, pack));
        }

        if (clashes.Count > 0)
        {
            throw new UsageException(string.Join('\n', clashes));
        }
    }

    private static string FolderOf(string flock) => Path.GetDirectoryName(flock) is { Length: > 0 } beside ? beside : ".";

    private OutputFile In(string ending) => OutputFile.In(_folder, _name + ending, host);

    private IEnumerable<EarlierFile> EarlierIn(string place)
    {
        var there = new DirectoryInfo(host.FullPath(place));
        // What is empty is a pipe or a device, which would keep us waiting.
        FileInfo[] files = !there.Exists ? [] : FileTrouble.Told<FileInfo[]>(
            () => [.. there.EnumerateFiles(_name + "*").Where(f => PackFileNames.MayRemember(_name, f.Name) && f.Length > 0).OrderBy(f => f.Name, StringComparer.Ordinal)],
            why => Messages.CannotRead(place, why));
        return files.Select(f => Earlier(OutputFile.In(place, f.Name, host).Shown, host));
    }
}
