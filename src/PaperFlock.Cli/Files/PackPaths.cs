using PaperFlock.Cli.Wiring;

namespace PaperFlock.Cli.Files;

/// <summary>Where a pack goes, and how the user is told of it: a path as typed, made absolute only to be opened.</summary>
internal sealed class PackPaths
{
    public const string Pdf = ".pdf";

    private readonly string _folder;
    private readonly string _name;
    private readonly string _flock;
    private readonly Host _surroundings;

    /// <param name="folder">As typed; null for the folder the flock file is in.</param>
    /// <exception cref="UsageException">The folder is a file, or would be inside one.</exception>
    public PackPaths(string flockPath, string? folder, Host host)
    {
        Flock = flockPath;
        _folder = folder ?? (Path.GetDirectoryName(flockPath) is { Length: > 0 } beside ? beside : ".");
        _surroundings = host;
        _flock = host.FullPath(flockPath);
        var name = Path.GetFileNameWithoutExtension(flockPath);
        _name = name.Length == 0 ? Messages.UnnamedPack : name;
        OutFolder.MustNotBeAFile(_folder, host);
    }

    /// <summary>The flock file, as typed.</summary>
    public string Flock { get; }

    /// <summary>As typed.</summary>
    public string Folder => _folder;

    public string FullFolder => _surroundings.FullPath(_folder);

    public string ShownPictures => Shown(_name + "-pages");

    public string ShownFile(PackDocument document) => ShownFile(document.Suffix + Pdf);

    /// <param name="ending">What follows the flock's name, such as <c>.ics</c>.</param>
    public string ShownFile(string ending) => Shown(_name + ending);

    /// <exception cref="UsageException">It would be written over the flock file.</exception>
    public string File(PackDocument document) => File(document.Suffix + Pdf);

    /// <param name="ending">What follows the flock's name, such as <c>.ics</c>.</param>
    /// <exception cref="UsageException">It would be written over the flock file.</exception>
    public string File(string ending)
    {
        var full = _surroundings.FullPath(ShownFile(ending));
        // Case may not count on this disk, and nothing is worth losing the only input.
        return string.Equals(full, _flock, StringComparison.OrdinalIgnoreCase)
            ? throw new UsageException(Messages.CannotWrite(ShownFile(ending), Messages.IsTheFlockFile))
            : full;
    }

    /// <summary>The full path of a document of this pack, without the ending of its kind.</summary>
    public string FullName(string suffix) => _surroundings.FullPath(Shown(_name + suffix));

    public string ShownPicture(string name) => Path.Combine(ShownPictures, name);

    public string Picture(string name) => _surroundings.FullPath(ShownPicture(name));

    private string Shown(string name) => _folder == "." ? name : Path.Combine(_folder, name);
}
