using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Completions;
using System.CommandLine.Parsing;
using ToolWear.Core.Shops;
using ToolWear.Doors;
using ToolWear.Storage;

namespace ToolWear.Commands.Calls;

/// <summary>What shells that complete are offered, each word where it fits.</summary>
internal static class Offers
{
    // what stands for a file among the words
    private const string FileHere = "<file>";

    /// <summary>What a shell may offer: options where one is begun, else the words of that place; "&lt;file&gt;" for files.</summary>
    public static string Of(ParseResult parsed, bool isBegun)
    {
        Command command = parsed.CommandResult.Command;
        string word = isBegun ? parsed.Tokens[^1].Value : "";
        Token? last = parsed.Tokens.SkipLast(isBegun ? 1 : 0).LastOrDefault();
        Option? option = command
            .Options.Concat(parsed.RootCommandResult.Command.Options)
            .FirstOrDefault(each => each.Name == last?.Value && each.Arity.MinimumNumberOfValues > 0);
        int given = parsed.CommandResult.Children.OfType<ArgumentResult>().Sum(argument => argument.Tokens.Count);
        CompletionContext context = parsed.GetCompletionContext();
        IEnumerable<CompletionItem> offered =
            word.StartsWith('-') || (command is not Verb && option is null) ? parsed.GetCompletions()
            : option is not null ? option.GetCompletions(context)
            : command.Arguments.ElementAtOrDefault(given - (isBegun ? 1 : 0))?.GetCompletions(context) ?? [];
        string[] labels = [.. offered.Select(item => item.Label)];
        return labels.Any(label => label.EndsWith(FileHere, StringComparison.Ordinal))
            ? FileHere + "\n"
            : string.Concat(
                labels
                    .Where(label =>
                        label.StartsWith(word, StringComparison.Ordinal)
                        && label.StartsWith('-') == word.StartsWith('-')
                        && (label is not ['-', _])
                    )
                    .Select(label => label + "\n")
            );
    }

    /// <summary>Offers words to shells that complete.</summary>
    public static Option<T> Offering<T>(this Option<T> option, ImmutableArray<string> words)
    {
        Offer(option.CompletionSources, _ => words);
        return option;
    }

    /// <summary>Offers words to shells that complete.</summary>
    public static Argument<T> Offering<T>(this Argument<T> argument, ImmutableArray<string> words)
    {
        // else help would list every word in the name's place
        argument.HelpName ??= argument.Name;
        Offer(argument.CompletionSources, _ => words);
        return argument;
    }

    /// <summary>Offers words of the shop to shells that complete.</summary>
    public static Option<T> Offering<T>(this Option<T> option, Func<Shop, IEnumerable<string>> words)
    {
        Offer(option.CompletionSources, typed => Known(typed).SelectMany(words).Distinct(StringComparer.Ordinal));
        return option;
    }

    /// <summary>Offers words of the shop to shells that complete.</summary>
    public static Argument<T> Offering<T>(this Argument<T> argument, Func<Shop, IEnumerable<string>> words)
    {
        // else help would list every word in the name's place
        argument.HelpName ??= argument.Name;
        Offer(argument.CompletionSources, typed => Known(typed).SelectMany(words).Distinct(StringComparer.Ordinal));
        return argument;
    }

    /// <summary>Offers words that depend on what else was typed.</summary>
    public static Option<T> Offering<T>(this Option<T> option, Func<ParseResult, IEnumerable<string>> words)
    {
        Offer(option.CompletionSources, words);
        return option;
    }

    /// <summary>Offers words that depend on what else was typed.</summary>
    public static Argument<T> Offering<T>(this Argument<T> argument, Func<ParseResult, IEnumerable<string>> words)
    {
        argument.HelpName ??= argument.Name;
        Offer(argument.CompletionSources, words);
        return argument;
    }

    /// <summary>Says to shells that a file belongs in a place where one does: they know best what files there are.</summary>
    public static void Files(IEnumerable<Symbol> symbols)
    {
        foreach (Symbol symbol in symbols)
        {
            if (
                symbol is Argument { Name: var name } argument
                && (name.Contains("FILE", StringComparison.Ordinal) || name == "DIR")
            )
            {
                argument.CompletionSources.Add(typed => [new CompletionItem(typed.WordToComplete + FileHere)]);
            }
            else if (symbol is Option { HelpName: "FILE" } option)
            {
                option.CompletionSources.Add(typed => [new CompletionItem(typed.WordToComplete + FileHere)]);
            }
        }
    }

    /// <summary>The gauge marks of the tool that was typed before.</summary>
    public static IEnumerable<string> Gauges(ParseResult typed)
    {
        string? mark = typed
            .CommandResult.Children.OfType<ArgumentResult>()
            .SelectMany(argument => argument.Tokens)
            .FirstOrDefault()
            ?.Value;
        return Known(typed)
            .SelectMany(shop => shop.Tools.Values)
            .Where(tool => tool.State != ToolState.Scrapped && (mark is null || tool.Mark.Text == mark))
            .SelectMany(tool => tool.Tool.GaugeMarks, (_, gauge) => gauge.Name)
            .Distinct(StringComparer.Ordinal);
    }

    private static void Offer(
        List<Func<CompletionContext, IEnumerable<CompletionItem>>> to,
        Func<ParseResult, IEnumerable<string>> words
    )
    {
        to.Clear();
        to.Add(typed => words(typed.ParseResult).Select(word => new CompletionItem(word)));
    }

    /// <summary>The shop that was named; none where it cannot be read: a shell wants words, not sentences.</summary>
    private static IEnumerable<Shop> Known(ParseResult typed)
    {
        try
        {
            Site site = ((Parsing)typed.Configuration).Site;
            using Bench bench = Bench.ToRead(site, Path.GetFullPath(typed.GetValue(Said.Store) ?? site.UsualStore));
            return [bench.Shop];
        }
        catch (Exception e)
            when (e is StoreException or IOException or UnauthorizedAccessException or ArgumentException)
        {
            return [];
        }
    }
}
