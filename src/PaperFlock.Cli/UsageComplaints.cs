using System.CommandLine;
using System.CommandLine.Parsing;
using PaperFlock.Cli.Lists;
using PaperFlock.Diagnostics;

namespace PaperFlock.Cli;

/// <summary>What is wrong with a command line, in our words rather than the library's.</summary>
internal static class UsageComplaints
{
    public static IEnumerable<string> Of(ParseResult typed)
    {
        var command = typed.CommandResult.Command;
        if (typed.UnmatchedTokens.Count > 0)
        {
            // A slip in a command makes everything after it unknown as well: the first is the one to put right.
            return [Unknown(typed.UnmatchedTokens[0], command)];
        }

        return typed.Errors
            .Select(error => error.SymbolResult switch
            {
                ArgumentResult { Tokens.Count: 0, Argument.Name: Messages.ThingArgument } => Messages.NothingToExplain,
                ArgumentResult { Tokens.Count: 0, Parent: CommandResult, Argument.Name: ListMessages.ListArgument } => ListMessages.NoList(Messages.Typed(command)),
                ArgumentResult { Tokens.Count: 0, Parent: CommandResult } => Messages.NoFlockFile(Messages.Typed(command)),
                CommandResult { Command.Subcommands.Count: > 0 } => Messages.NoSubcommand(Messages.Typed(command), command.Subcommands.Select(c => c.Name)),
                OptionResult { Tokens.Count: 0 } option => Messages.NoValue(option.Option.Name),
                _ => error.Message,
            })
            .Distinct(StringComparer.Ordinal);
    }

    /// <summary>Where any number of files may stand, a slip in an option would pass for one of them.</summary>
    public static void RefuseOptionsAsFiles(ArgumentResult files)
    {
        if (files.Parent is CommandResult typed && files.Tokens.FirstOrDefault(t => t.Value.StartsWith('-')) is { } slip)
        {
            files.AddError(Unknown(slip.Value, typed.Command));
        }
    }

    private static string Unknown(string word, Command command)
    {
        if (word.StartsWith('-'))
        {
            var options = command.Options.Concat(command.Parents.OfType<Command>().SelectMany(c => c.Options)).Select(o => o.Name);
            return Messages.NoSuchOption(word, NearestWord.Find(word, options));
        }

        return command.Subcommands.Count > 0
            ? Messages.NoSuchCommand(word, NearestWord.Find(word, command.Subcommands.Select(c => c.Name)))
            : command.Arguments.Count > 0 ? Messages.OneTooMany(word) : Messages.WantsNoFile(command.Name, word);
    }
}
