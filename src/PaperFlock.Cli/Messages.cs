namespace PaperFlock.Cli;

/// <summary>What is said in more than one place. Plain English for somebody who keeps sheep and seldom types.</summary>
internal static class Messages
{
    public const string Program = "paperflock";

    public const string Composing = "laying out the sheets";

    public static string Version { get; } = $"{Program} {typeof(Messages).Assembly.GetName().Version?.ToString(3)}";

    /// <summary>A file's name as a shell wants it.</summary>
    public static string Quoted(string file) => file.Contains(' ', StringComparison.Ordinal) ? $"\"{file}\"" : file;

    /// <summary>What to do next, each after the one before: a command with its file, or a few words.</summary>
    public static string Next(params string[] steps) => $"Next: {string.Join(", and then ", steps)}";

    /// <summary>A command for that file, as it is typed.</summary>
    public static string Typed(string command, string file) => $"{Program} {command} {Quoted(file)}";

    public static string Complaint(string what) => $"{Program}: {what}";

    public static string CannotRead(string path, string reason) => $"cannot read {path}: {reason}";

    public static string CannotWrite(string path, string reason) => $"cannot write {path}: {reason}; what was there before is untouched";

    public static string CannotWriteInto(string folder, string reason) => $"cannot write into {folder}: {reason}";
}
