using System.Reflection;
using System.Text.RegularExpressions;
using Mono.Cecil;
using Mono.Cecil.Cil;
using NetArchTest.Rules;
using PaperFlock.Diagnostics;
using PaperFlock.Flocks;
using PaperFlock.Layout;
using PaperFlock.Pdf;
using PaperFlock.Planning;
using PaperFlock.Sheets;

namespace PaperFlock.Packs.Tests.Architecture;

/// <summary>Which room may know which. The projects' references hold most of it; this holds the rest, and says it in one place.</summary>
public sealed partial class ArrowTests
{
    private static readonly Dictionary<string, Assembly> Rooms = new[]
    {
        typeof(Diagnostic), typeof(Flock), typeof(SeasonPlan), typeof(ITextMeasurer), typeof(Sheet), typeof(PdfPrinter), typeof(PackMaker), typeof(PaperFlock.Cli.App),
    }.ToDictionary(t => t.Assembly.GetName().Name!, t => t.Assembly, StringComparer.Ordinal);

    /// <summary>The room, and all it may refer to besides the runtime.</summary>
    [Theory]
    [InlineData("PaperFlock.Diagnostics", "")]
    [InlineData("PaperFlock.Flocks", "PaperFlock.Diagnostics NodaTime YamlDotNet CsvHelper")]
    [InlineData("PaperFlock.Planning", "PaperFlock.Diagnostics PaperFlock.Flocks NodaTime")]
    [InlineData("PaperFlock.Layout", "")]
    [InlineData("PaperFlock.Sheets", "PaperFlock.Diagnostics PaperFlock.Flocks PaperFlock.Planning PaperFlock.Layout NodaTime")]
    [InlineData("PaperFlock.Pdf", "PaperFlock.Layout")]
    [InlineData("PaperFlock.Packs", "PaperFlock.Diagnostics PaperFlock.Flocks PaperFlock.Planning PaperFlock.Layout PaperFlock.Sheets PaperFlock.Pdf NodaTime")]
    [InlineData("paperflock", "PaperFlock.Diagnostics PaperFlock.Flocks PaperFlock.Planning PaperFlock.Layout PaperFlock.Sheets PaperFlock.Pdf PaperFlock.Packs NodaTime System.CommandLine Spectre.Console Spectre.Console.Ansi SkiaSharp")]
    public void A_room_refers_only_to_what_it_may(string room, string may)
    {
        var refers = Rooms[room].GetReferencedAssemblies().Select(a => a.Name!).Where(IsNotTheRuntime);
        Assert.Empty(refers.Except(may.Split(' ', StringSplitOptions.RemoveEmptyEntries), StringComparer.Ordinal));
    }

    [Fact]
    public void Only_the_reader_knows_yaml()
    {
        var knowing = Types.InAssembly(Rooms["PaperFlock.Flocks"]).That().HaveDependencyOn("YamlDotNet").GetTypes().ToList();
        Assert.NotEmpty(knowing);
        Assert.All(knowing, t => Assert.StartsWith("PaperFlock.Flocks.Reading", t.Namespace, StringComparison.Ordinal));
    }

    /// <summary>What a page in a browser could not do either. The record of an issue is handed out at the door. Pictures are the command line's own.</summary>
    [Theory]
    [InlineData("PaperFlock.Sheets.PackComposer")]
    [InlineData("PaperFlock.Sheets.IssueComposer")]
    [InlineData("PaperFlock.Pdf")]
    public void The_command_line_makes_packs_by_the_front_door_alone(string room)
    {
        var reaching = Types.InAssembly(Rooms["paperflock"]).That().HaveDependencyOn(room).GetTypes().Select(t => t.FullName!);
        Assert.DoesNotContain(reaching, name => !name.StartsWith("PaperFlock.Cli.Pictures", StringComparison.Ordinal));
    }

    /// <summary>It is built for another runtime, so its sources stand for it here.</summary>
    [Fact]
    public void The_page_makes_packs_by_the_front_door_alone()
    {
        var folder = Path.Combine(Samples.Root, "src", "PaperFlock.Page");
        var sources = Directory.GetFiles(folder, "*.cs").Append(Path.Combine(folder, "PaperFlock.Page.csproj")).Select(File.ReadAllText).ToList();
        Assert.True(sources.Count > 1);
        var named = sources.SelectMany(s => Room().Matches(s)).Select(m => m.Value).Distinct();
        Assert.Empty(named.Except(["PaperFlock.Page", "PaperFlock.Packs"], StringComparer.Ordinal));
    }

    /// <summary>The clock, the disk and the terminal exist in the command line alone.</summary>
    [Theory]
    [InlineData("NodaTime.SystemClock")]
    [InlineData("System.IO.File")]
    [InlineData("System.IO.FileStream")]
    [InlineData("System.IO.Directory")]
    [InlineData("System.Console")]
    [InlineData("System.Net")]
    [InlineData("System.Diagnostics.Process")]
    [InlineData("System.Random")]
    public void No_room_but_the_command_line_reaches_outside(string outside)
    {
        var rooms = Rooms.Where(r => r.Key != "paperflock").Select(r => r.Value);
        var reaching = Types.InAssemblies(rooms).That().HaveDependencyOn(outside).GetTypes().Select(t => t.FullName);
        Assert.Empty(reaching);
    }

    /// <summary>On Linux that is OpenSSL, which a bare system does not have: the program would end there and then.</summary>
    [Fact]
    public void Nobody_asks_for_the_computers_cryptography()
    {
        var asking = Types.InAssemblies(Rooms.Values).That().HaveDependencyOn("System.Security.Cryptography").GetTypes().Select(t => t.FullName);
        Assert.Empty(asking);
    }

    [Fact]
    public void The_clock_is_read_in_one_place()
    {
        var reading = Types.InAssembly(Rooms["paperflock"]).That().HaveDependencyOn("NodaTime.SystemClock").GetTypes().Select(t => t.Name);
        Assert.Equal(["Program"], reading);
    }

    /// <summary>
    /// The plan holds facts, and the sheets and the screen put words to them: two words side by side are a sentence.
    /// </summary>
    [Fact]
    public void The_plan_says_nothing_in_words()
    {
        using var room = ModuleDefinition.ReadModule(Rooms["PaperFlock.Planning"].Location);
        var said =
            from type in room.GetTypes()
            from method in type.Methods
            where method.HasBody
            from instruction in method.Body.Instructions
            where instruction.OpCode == OpCodes.Ldstr && TwoWords().IsMatch((string)instruction.Operand)
            select $"{type.FullName}: {instruction.Operand}";
        Assert.Empty(said);
    }

    [GeneratedRegex(@"PaperFlock\.\w+")]
    private static partial Regex Room();

    [GeneratedRegex(@"\p{L} +\p{L}")]
    private static partial Regex TwoWords();

    /// <summary>System.CommandLine is a package, whatever it is called.</summary>
    private static bool IsNotTheRuntime(string name) =>
        name == "System.CommandLine"
        || !(name.StartsWith("System.", StringComparison.Ordinal) || name.StartsWith("Microsoft.", StringComparison.Ordinal) || name is "netstandard" or "mscorlib");
}
