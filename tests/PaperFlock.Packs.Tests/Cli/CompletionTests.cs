using System.Diagnostics;
using PaperFlock.Cli;

namespace PaperFlock.Packs.Tests.Cli;

public sealed class CompletionTests
{
    private static readonly string[] Shells = ["bash", "zsh", "fish", "pwsh"];

    [Theory]
    [InlineData("", "pack")]
    [InlineData("", "completion")]
    [InlineData("pa", "pack")]
    [InlineData("pack --sp", "--split")]
    [InlineData("enter ", "scan")]
    public void What_may_follow_is_told(string line, string follows)
    {
        using var bench = new Workbench();
        var told = bench.Run($"[suggest:{line.Length}]", line);
        Assert.Equal((ExitStatus.Clean, ""), (told.Status, told.Error));
        Assert.Contains(follows, told.Out.ReplaceLineEndings("\n").Split('\n'));
    }

    [Fact]
    public void Each_shell_has_its_lines()
    {
        using var bench = new Workbench();
        Assert.All(Shells, shell => Assert.Contains("[suggest:", bench.Run("completion", shell).Out, StringComparison.Ordinal));
    }

    /// <summary>A real bash reads the lines, and completes with a program that answers as ours does.</summary>
    [Fact]
    public void Bash_completes_with_them()
    {
        Assert.SkipUnless(File.Exists("/bin/bash"), "There is no bash here.");
        using var bench = new Workbench();
        bench.Write("completion.sh", bench.Run("completion", "bash").Out);
        bench.Write("try.sh", """
            . ./completion.sh
            paperflock() { [ "$1" = '[suggest:8]' ] && [ "$2" = 'pack --s' ] && printf -- '--split\n--since\n--png\n'; }
            COMP_LINE='./paperflock pack --s' COMP_POINT=21 COMP_WORDS=(./paperflock pack --s) COMP_CWORD=2
            _paperflock
            printf '%s\n' "${COMPREPLY[@]}"
            """);
        using var bash = Process.Start(new ProcessStartInfo("/bin/bash", ["--norc", "try.sh"]) { WorkingDirectory = bench.Folder, RedirectStandardOutput = true })!;
        Assert.Equal("--split\n--since\n", bash.StandardOutput.ReadToEnd());
        bash.WaitForExit();
    }

    [Fact]
    public void Help_and_version_are_commands_too()
    {
        using var bench = new Workbench();
        Assert.Equal(bench.Run("--version").Out, bench.Run("version").Out);
        Assert.Equal(bench.Run("pack", "--help").Out, bench.Run("help", "pack").Out);
        Assert.Equal(bench.Run("--help").Out, bench.Run("help").Out);
        Assert.Equal(ExitStatus.WrongUse, bench.Run("help", "pakc").Status);
    }
}
