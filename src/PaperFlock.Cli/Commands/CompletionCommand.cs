using System.CommandLine;

namespace PaperFlock.Cli.Commands;

/// <summary>Writes a few lines for a shell, which then asks the program itself what may follow on a line.</summary>
internal static class CompletionCommand
{
    // Each takes the program's own name off the line: it may have been typed with a path.
    private static readonly (string Shell, string Into, string Script)[] Shells =
    [
        ("bash", "~/.bashrc", """
            _paperflock() {
              local line=${COMP_LINE:0:COMP_POINT} word=${COMP_WORDS[COMP_CWORD]} found
              line=${line#* }
              found=$(paperflock "[suggest:${#line}]" "$line" 2>/dev/null)
              mapfile -t COMPREPLY < <(compgen -W "$found" -- "$word"; [[ $COMP_CWORD -gt 1 && $word != -* ]] && compgen -f -- "$word")
            }
            complete -o filenames -F _paperflock paperflock
            """),
        ("zsh", "~/.zshrc, after compinit", """
            _paperflock() {
              local line="${BUFFER[1,CURSOR]#* }"
              local -a found
              found=("${(@f)$(paperflock "[suggest:${#line}]" "$line" 2>/dev/null)}")
              compadd -a found
              (( CURRENT > 2 )) && _files
            }
            compdef _paperflock paperflock
            """),
        ("fish", "~/.config/fish/completions/paperflock.fish", """
            function __paperflock_complete
              set -l line (commandline -cp | string replace -r '^\S+\s*' '')
              paperflock "[suggest:"(string length -- "$line")"]" "$line" 2>/dev/null
            end
            complete -c paperflock -a '(__paperflock_complete)'
            """),
        ("pwsh", "the file that $PROFILE names", """
            Register-ArgumentCompleter -Native -CommandName paperflock -ScriptBlock {
              param($word, $ast, $cursor)
              $line = $ast.ToString().PadRight($cursor).Substring(0, $cursor) -replace '^\S+\s*', ''
              paperflock "[suggest:$($line.Length)]" "$line" 2>$null | Where-Object { $_ -like "$word*" } | ForEach-Object {
                [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_)
              }
            }
            """),
    ];

    public static Command Describe(Host host)
    {
        var completion = new Command("completion", "write a few lines that let a shell complete what you type");
        foreach (var (shell, into, script) in Shells)
        {
            var command = new Command(shell, $"for {shell}: add them to {into}");
            command.SetAction(_ =>
            {
                host.Out.Write($"# Completion for paperflock. Put these lines into {into}.\n{script.ReplaceLineEndings("\n")}\n");
                return ExitStatus.Clean;
            });
            completion.Add(command);
        }

        return completion;
    }
}
