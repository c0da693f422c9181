using System.CommandLine;
using System.CommandLine.Parsing;
using PaperFlock.Cli.Commands;

namespace PaperFlock.Cli;

/// <summary>What is wrong with a command line, in our words rather than the library's.</summary>
internal static class UsageComplaints
{
    public static IEnumerable<string> Of(ParseResult typed)
    {
        var command = typed.CommandResult.Command;
        var name = string.Join(' ', Typed(command));
        if (typed.UnmatchedTokens.Count > 0)
        {
            // A slip in a command makes everything after it unknown as well: the first is the one to put right.
            return [Unknown(typed.UnmatchedTokens[0], command)];
        }

        return typed.Errors
            .Select(error => error.SymbolResult switch
            {
                ArgumentResult { Tokens.Count: 0, Argument.Name: "DATE|JOB|EWE" } =>
                    "explain wants a flock file and a day, a job or a ewe, such as: paperflock explain flocks/hollin-bank.yaml scan",
                ArgumentResult { Tokens.Count: 0, Argument.Name: AddEwesCommand.ListArgument } => $"{name} wants a list as well, such as: paperflock {name} my-flock.yaml ewes.csv",
                ArgumentResult { Tokens.Count: 0, Parent: CommandResult } => $"{name} wants a flock file, such as: paperflock {name} flocks/hollin-bank.yaml",
                CommandResult { Command.Subcommands.Count: > 0 } => $"{name} wants one word more: {ScreenText.List(command.Subcommands.Select(c => c.Name), "or")}",
                OptionResult { Tokens.Count: 0 } option => $"{option.Option.Name} wants something after it",
                _ => error.Message,
            })
            .Distinct(StringComparer.Ordinal);
    }

    /// <summary>A command as it is typed after the program's name: "enter", "scan".</summary>
    public static IEnumerable<string> Typed(Command command) =>
        command is RootCommand ? [] : [.. command.Parents.OfType<Command>().Take(1).SelectMany(Typed), command.Name];

    /// <summary>Where any number of files may stand, a slip in an option would pass for one of them.</summary>
    public static void RefuseOptionsAsFiles(ArgumentResult files)
    {
        if (files.Parent is CommandResult typed && files.Tokens.FirstOrDefault(t => t.Value.StartsWith('-')) is { } slip)
        {
            files.AddError(Unknown(slip.Value, typed.Command));
        }
    }

    /// <summary>That a word or an option is none the command knows.</summary>
    public static string Unknown(string word, Command command)
    {
        if (word.StartsWith('-'))
        {
            var options = command.Options.Concat(command.Parents.OfType<Command>().SelectMany(c => c.Options)).Select(o => o.Name);
            return $"there is no option '{word}'{DidYouMean(word, options)}";
        }

        return command switch
        {
            { Subcommands.Count: > 0 } => $"there is no command '{word}'{DidYouMean(word, command.Subcommands.Select(c => c.Name))}",
            { Arguments.Count: > 0 } => $"'{word}' is one thing too many: name one flock file, and put quotes round a name with spaces in it",
            _ => $"'{word}' is one thing too many: {command.Name} wants no file",
        };
    }

    private static string DidYouMean(string word, IEnumerable<string> words) => NearestWord.Find(word, words) is { } nearest ? $"; did you mean '{nearest}'?" : "";
}
