using System;
using System.Collections.Generic;
using System.IO;
using System.IO.Compression;
using System.Linq;
using System.Security.Cryptography;
using System.Text;
using Microsoft.Build.Framework;
using Microsoft.Build.Utilities;

/// <summary>
/// A step of the build: the published engine, the page's modules, style and fonts become one HTML file that needs nothing beside it. Compiled by the build itself,
/// for .NET Standard 2.0, so that publishing needs the .NET SDK and nothing else.
/// </summary>
/// <remarks>
/// A page from a memory stick may not load the files beside it, so every part is in the file: the engine's in base64, most of them packed by gzip, and taken out by the page;
/// modules by an import map, under the names by which they import each other. A module of the engine that asks where it came from is told an address that leads nowhere.
/// </remarks>
public sealed class PackPage : Task
{
    /// <summary>Nothing is ever asked of it: `.invalid` is reserved (RFC 2606).</summary>
    public const string Nowhere = "\"https://paperflock.invalid/\"";

    private const int MostBytes = 6 * 1000 * 1000;

    /// <summary>How often each part of the runtime asks where it came from. Another number means another runtime, to be looked at before it goes out.</summary>
    private static readonly Dictionary<string, int> AskWhere = new Dictionary<string, int> { ["dotnet.js"] = 2, ["dotnet.native.js"] = 4, ["dotnet.runtime.js"] = 0 };

    /// <summary>Folder of the published parts of the engine.</summary>
    [Required]
    public string Engine { get; set; }

    /// <summary>Folder of the page's own files.</summary>
    [Required]
    public string Page { get; set; }

    [Required]
    public string Fonts { get; set; }

    [Required]
    public string Into { get; set; }

    public override bool Execute()
    {
        var modules = Directory.GetFiles(Page, "*.js", SearchOption.AllDirectories).Where(f => Path.GetFileName(f) != "worker.js").OrderBy(f => f, StringComparer.Ordinal);
        var imports = string.Join(",\n", modules.Select(f => $"\"#page/{f.Substring(Page.Length).TrimStart('/', '\\').Replace('\\', '/')}\": \"data:text/javascript;base64,{Base64(File.ReadAllBytes(f))}\""));
        var map = "{\"imports\": {\n" + imports + "\n}}";
        var start = "import '#page/app.js';";
        var style = File.ReadAllText(Path.Combine(Page, "page.css")) + string.Concat(new[] { ("Next-Regular", "Hand", 400), ("Next-Bold", "Hand", 700), ("Mono-Regular", "HandMono", 400), ("Mono-Bold", "HandMono", 700) }.Select(Face));
        var policy = "default-src 'none'; script-src 'wasm-unsafe-eval' data: blob: " + Hash(map) + " " + Hash(start) + "; worker-src blob:; style-src " + Hash(style)
            + "; font-src data:; img-src data: blob:; connect-src data: blob:; base-uri 'none'; form-action 'none'";
        var parts = string.Join(",\n", Directory.GetFiles(Engine).Where(IsPart).OrderBy(f => f, StringComparer.Ordinal).Select(f => $"\"{Path.GetFileName(f)}\": \"{Base64(Gzip(Part(f)))}\""));

        var html = File.ReadAllText(Path.Combine(Page, "page.html"));
        html = Put(html, "<!-- policy -->", $"<meta http-equiv=\"Content-Security-Policy\" content=\"{policy}\">");
        html = Put(html, "<!-- style -->", $"<style>{style}</style>");
        html = Put(html, "<!-- modules -->", $"<script type=\"importmap\">{map}</script>");
        html = Put(html, "<!-- worker -->", $"<script type=\"text/plain\" id=\"worker\">{File.ReadAllText(Path.Combine(Page, "worker.js"))}</script>");
        html = Put(html, "<!-- engine -->", "<script type=\"application/json\" id=\"engine\">{\n" + parts + "\n}</script>");
        html = Put(html, "<!-- start -->", $"<script type=\"module\">{start}</script>");
        var bytes = new UTF8Encoding(false).GetBytes(html);
        if (bytes.Length > MostBytes)
        {
            throw new InvalidOperationException($"The page has {bytes.Length} bytes, and may have {MostBytes}.");
        }

        File.WriteAllBytes(Into, bytes);
        Log.LogMessage(MessageImportance.High, $"{Into}: {bytes.Length} bytes");
        return true;
    }

    private static bool IsPart(string file) => new[] { ".wasm", ".js" }.Contains(Path.GetExtension(file));

    private static byte[] Part(string file)
    {
        if (Path.GetExtension(file) != ".js")
        {
            return File.ReadAllBytes(file);
        }

        var pieces = File.ReadAllText(file).Split(new[] { "import.meta.url" }, StringSplitOptions.None);
        if (!AskWhere.TryGetValue(Path.GetFileName(file), out var wanted) || pieces.Length - 1 != wanted)
        {
            throw new InvalidOperationException($"{Path.GetFileName(file)} asks {pieces.Length - 1} times where it came from: see whether the page still works, and write the number down.");
        }

        return Encoding.UTF8.GetBytes(string.Join(Nowhere, pieces));
    }

    /// <summary>In place of a mark that must be there once.</summary>
    private static string Put(string html, string mark, string text)
    {
        var at = html.IndexOf(mark, StringComparison.Ordinal);
        if (at < 0 || html.IndexOf(mark, at + 1, StringComparison.Ordinal) >= 0)
        {
            throw new InvalidOperationException($"The page has to have {mark} once.");
        }

        return html.Substring(0, at) + text + html.Substring(at + mark.Length);
    }

    private string Face((string File, string Family, int Weight) face)
    {
        var bytes = File.ReadAllBytes(Path.Combine(Fonts, $"AtkinsonHyperlegible{face.File}.ttf"));
        return $"\n@font-face {{ font-family: {face.Family}; font-weight: {face.Weight}; src: url(data:font/ttf;base64,{Base64(bytes)}); }}";
    }

    private static byte[] Gzip(byte[] bytes)
    {
        using (var packed = new MemoryStream())
        {
            // The smallest size is a name newer than what this is compiled for.
            using (var zip = new GZipStream(packed, (CompressionLevel)3))
            {
                zip.Write(bytes, 0, bytes.Length);
            }

            return packed.ToArray();
        }
    }

    private static string Hash(string script)
    {
        using (var sha = SHA256.Create())
        {
            return $"'sha256-{Base64(sha.ComputeHash(Encoding.UTF8.GetBytes(script)))}'";
        }
    }

    private static string Base64(byte[] bytes) => Convert.ToBase64String(bytes);
}
