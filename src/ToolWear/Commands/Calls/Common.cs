using System.Collections.Immutable;
using System.CommandLine;

namespace ToolWear.Commands.Calls;

/// <summary>The options that every verb takes.</summary>
internal static class Common
{
    public static Option<string?> Store { get; } =
        new("--store")
        {
            HelpName = "FILE",
            Description = Words.HelpStore,
            Recursive = true,
        };

    public static Option<string?> Units { get; } =
        new("--units")
        {
            HelpName = "mm|in",
            Description = Words.HelpUnits,
            Recursive = true,
        };

    public static Option<string?> As { get; } =
        new("--as")
        {
            HelpName = "text|csv|json",
            Description = Words.HelpAs,
            Recursive = true,
        };

    public static Option<string?> On { get; } =
        new("--on")
        {
            HelpName = "DATE",
            Description = Words.HelpOn,
            Recursive = true,
        };

    public static Option<bool> Alone { get; } = new("--alone") { Description = Words.HelpAlone, Recursive = true };

    public static Argument<string> Mark(string name = "TOOL") => new(name) { Description = Words.HelpMark };

    /// <summary>An option with a text value.</summary>
    public static Option<string?> Text(string name, string valueName, string description) =>
        new(name) { HelpName = valueName, Description = description };

    /// <summary>A verb with its example, its own symbols and what it does.</summary>
    public static Command Verb(
        Site site,
        string name,
        string does,
        string example,
        IEnumerable<Symbol> symbols,
        Action<Call> run,
        string more = "",
        params ImmutableArray<string> prints
    )
    {
        VerbCommand verb = new(name, does, example, more) { Prints = prints };
        foreach (Symbol symbol in symbols)
        {
            if (symbol is Argument argument)
            {
                verb.Add(argument);
            }
            else if (symbol is Option option)
            {
                verb.Add(option);
            }
        }

        verb.SetAction(parsed => Call.Run(site, parsed, run));
        return verb;
    }
}
