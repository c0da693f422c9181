namespace PaperFlock.Cli.Files;

/// <summary>Where the files made of a flock go: into one folder, with the name of the flock file before what each is.</summary>
internal sealed class PackPaths
{
    public const string Pdf = ".pdf";

    /// <summary>What follows the flock's name in the name of the folder of pictures.</summary>
    public const string Pages = "-pages";

    private readonly string _folder;
    private readonly string _name;
    private readonly Host _host;

    /// <param name="flock">The flock file, as typed.</param>
    /// <param name="folder">As typed; null for the folder the flock file is in.</param>
    public PackPaths(string flock, string? folder, Host host)
    {
        (Flock, _host) = (flock, host);
        _folder = folder ?? (Path.GetDirectoryName(flock) is { Length: > 0 } beside ? beside : ".");
        _name = PackFileNames.Of(flock);
    }

    /// <summary>The flock file, as typed.</summary>
    public string Flock { get; }

    /// <param name="ending">What follows the flock's name, such as <c>.ics</c>.</param>
    /// <exception cref="UsageException">The folder is a file, or the flock file would be written over.</exception>
    public OutputFile Of(string ending)
    {
        var file = OutputFile.In(_folder, _name + ending, _host);
        // Case may not count on this disk, and nothing is worth losing the only input.
        return string.Equals(file.Full, _host.FullPath(Flock), StringComparison.OrdinalIgnoreCase)
            ? throw new UsageException(Messages.CannotWrite(file.Shown, "that is your flock file"))
            : file;
    }

    public OutputFile Of(PackDocument document) => Of(document.Suffix + Pdf);

    /// <param name="name">Of a page's picture.</param>
    public OutputFile Picture(string name) => OutputFile.In(Of(Pages).Shown, name, _host);

    /// <summary>Files that may remember what has been printed, by name.</summary>
    /// <exception cref="UsageException">The folder may not be looked into, or one cannot be read.</exception>
    public ImmutableArray<EarlierFile> Earlier()
    {
        var folder = new DirectoryInfo(_host.FullPath(_folder));
        // What is empty is a pipe or a device, which would keep us waiting.
        return !folder.Exists ? [] : FileTrouble.Told<ImmutableArray<EarlierFile>>(
            () =>
            [
                .. folder.EnumerateFiles(_name + "*")
                    .Where(f => PackFileNames.MayRemember(_name, f.Name) && f.Length > 0)
                    .OrderBy(f => f.Name, StringComparer.Ordinal)
                    .Select(f => OutputFile.In(_folder, f.Name, _host).Shown)
                    .Select(shown => new EarlierFile(shown, InputFile.Read(shown, _host, EarlierFile.MostBytes + 1))),
            ],
            why => Messages.CannotRead(_folder, why));
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
            var files = suffixes.Select(s => OutputFile.In(pack._folder, pack._name + s + Pdf, pack._host)).ToList();
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
}
