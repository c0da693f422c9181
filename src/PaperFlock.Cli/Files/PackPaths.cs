using PaperFlock.Cli.Wiring;

namespace PaperFlock.Cli.Files;

/// <summary>Where a pack goes, and how the user is told of it: a path as typed, made absolute only to be opened.</summary>
internal sealed class PackPaths
{
    private readonly string _folder;
    private readonly string _name;
    private readonly string _flock;
    private readonly Surroundings _surroundings;

    /// <exception cref="UsageException">The folder is a file.</exception>
    public PackPaths(string flockPath, string folder, Surroundings surroundings)
    {
        _folder = folder;
        _surroundings = surroundings;
        _flock = surroundings.FullPath(flockPath);
        var name = Path.GetFileNameWithoutExtension(flockPath);
        _name = name.Length == 0 ? Words.UnnamedPack : name;
        if (System.IO.File.Exists(surroundings.FullPath(folder)))
        {
            throw new UsageException(Words.CannotWriteInto(folder, Words.IsAFile));
        }
    }

    public string ShownPictures => Shown(_name + "-pages");

    public string ShownFile(PackDocument document) => Shown(_name + document.Suffix + ".pdf");

    /// <exception cref="UsageException">It would be written over the flock file.</exception>
    public string File(PackDocument document)
    {
        var full = _surroundings.FullPath(ShownFile(document));
        // Case may not count on this disk, and nothing is worth losing the only input.
        return string.Equals(full, _flock, StringComparison.OrdinalIgnoreCase)
            ? throw new UsageException(Words.CannotWrite(ShownFile(document), Words.IsTheFlockFile))
            : full;
    }

    public string ShownPicture(string name) => Path.Combine(ShownPictures, name);

    public string Picture(string name) => _surroundings.FullPath(ShownPicture(name));

    private string Shown(string name) => _folder == "." ? name : Path.Combine(_folder, name);
}
