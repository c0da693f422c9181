namespace PaperFlock.Benchmarks.Beside;

/// <summary>Two general-purpose ways of printing the same pages, as programs of their own. `others.sh` installs them.</summary>
/// <param name="folder">Where the Typst compiler was installed.</param>
internal sealed class Others(string folder, PackPages pages) : IDisposable
{
    private static readonly string Fonts = Path.Combine(AppContext.BaseDirectory, "fonts");
    private readonly string _work = Directory.CreateTempSubdirectory("paperflock-beside-").FullName;

    public void Prepare()
    {
        File.WriteAllText(Path.Combine(_work, "pages.typ"), TypstSource.Of(pages));
        File.WriteAllText(Path.Combine(_work, "pages.html"), HtmlSource.Of(pages, Fonts));
        File.WriteAllText(Path.Combine(_work, "empty.html"), "<!DOCTYPE html><html><body></body></html>");
    }

    /// <returns>The whole process, and of it what compiling alone took.</returns>
    public (Measured Process, double Compiling) Typst(bool watched)
    {
        var script = Path.Combine(AppContext.BaseDirectory, "Beside", "typst.mjs");
        var run = ChildProcess.Run("node", [script, folder, Path.Combine(_work, "pages.typ"), Fonts, Path.Combine(_work, "typst.pdf")], watched);
        return (run, double.Parse(run.Output, CultureInfo.InvariantCulture));
    }

    /// <param name="page">"pages", or "empty" for what starting and stopping costs.</param>
    public Measured Chromium(string page, bool watched)
    {
        var profile = Path.Combine(_work, "profile");
        if (Directory.Exists(profile))
        {
            Directory.Delete(profile, recursive: true);
        }

        return ChildProcess.Run(
            "chromium",
            [
                "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
                $"--user-data-dir={profile}", "--no-pdf-header-footer", $"--print-to-pdf={Path.Combine(_work, $"chromium-{page}.pdf")}", new Uri(Path.Combine(_work, $"{page}.html")).AbsoluteUri,
            ],
            watched);
    }

    /// <param name="name">"typst" or "chromium-pages".</param>
    public long Size(string name) => new FileInfo(Path.Combine(_work, $"{name}.pdf")).Length;

    /// <summary>Copies what was made, to be looked at.</summary>
    public void Keep(string into)
    {
        Directory.CreateDirectory(into);
        foreach (var file in Directory.GetFiles(_work))
        {
            File.Copy(file, Path.Combine(into, Path.GetFileName(file)), overwrite: true);
        }
    }

    public void Dispose() => Directory.Delete(_work, recursive: true);
}
