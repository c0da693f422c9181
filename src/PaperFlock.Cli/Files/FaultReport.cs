using System.Runtime.InteropServices;

namespace PaperFlock.Cli.Files;

/// <summary>Details of a fault of the program, kept out of the user's sight and ready to be sent by the user, if at all.</summary>
internal static class FaultReport
{
    /// <returns>The full path of the file; null when not even that could be written.</returns>
    public static string? Save(Exception fault, IReadOnlyList<string> args, string folder)
    {
        var path = Path.Combine(folder, $"paperflock-fault-{Path.GetRandomFileName()}.txt");
        try
        {
            using var file = new StreamWriter(new FileStream(path, FileMode.CreateNew, FileAccess.Write));
            file.WriteLine(Messages.Version);
            file.WriteLine($"{RuntimeInformation.OSDescription}, {RuntimeInformation.RuntimeIdentifier}, {RuntimeInformation.FrameworkDescription}");
            file.WriteLine(string.Join(' ', args.Select(a => $"\"{a}\"")));
            file.WriteLine(fault);
            return path;
        }
        catch (Exception e) when (FileTrouble.IsOfFiles(e))
        {
            return null;
        }
    }
}
