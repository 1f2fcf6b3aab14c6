using System.CommandLine;
using System.Text;
using ToolWear.Commands.Calls;

namespace ToolWear.Commands.Files;

/// <summary>man: the manual page, made from what the verbs say of themselves in their help.</summary>
internal static class ManVerb
{
    public static Verb Verb { get; } =
        new(
            "man",
            "Writes the manual page.",
            "man",
            [],
            call => call.PrintAsIs(Page(call.Program)),
            "To read it: toolwear man > toolwear.1, then man -l toolwear.1"
        );

    /// <summary>A page in the macros of man(7).</summary>
    private static string Page(Command program)
    {
        StringBuilder page = new(
            ".TH TOOLWEAR 1 \"\" ToolWear\n.SH NAME\ntoolwear \\- the wear of hot\\-work tooling\n"
        );
        page.Append(
            ".SH SYNOPSIS\n.B toolwear\n[\\fIVERB\\fR] [\\fIARGUMENTS\\fR] [\\fIOPTIONS\\fR]\n.SH DESCRIPTION\n"
        );
        page.Append(Safe(program.Description))
            .Append(".PP\nWithout a verb the screens open.\n.SH OPTIONS OF EVERY VERB\n");
        Describe(page, program);
        page.Append(".SH VERBS\n");
        foreach (Verb verb in program.Subcommands.OfType<Verb>())
        {
            page.Append($".SS {verb.Name}\n{Safe(verb.Description)}");
            Describe(page, verb);
            page.Append($".PP\n.nf\n{Safe(verb.More)}.fi\n");
        }

        page.Append(".SH EXIT STATUS\n0 done; 1 wrong data or a failed check; 2 wrong usage, or no terminal for the\n");
        return page.Append("screens; 70 a fault of the program; 128 and more: ended by a signal.\n").ToString();
    }

    private static void Describe(StringBuilder page, Command command)
    {
        foreach (Argument argument in command.Arguments)
        {
            page.Append($".TP\n.I {argument.Name}\n{Safe(argument.Description)}");
        }

        foreach (Option option in command.Options)
        {
            page.Append($".TP\n\\fB{Safe(option.Name).TrimEnd()}\\fR {option.HelpName}\n{Safe(option.Description)}");
        }
    }

    /// <summary>Text in which nothing is taken for a request: each line begins harmlessly, a hyphen stays one.</summary>
    private static string Safe(string? text) =>
        string.Concat(
            (text ?? "")
                .TrimEnd()
                .Replace("\\", "\\e", StringComparison.Ordinal)
                .Replace("-", "\\-", StringComparison.Ordinal)
                .Split('\n')
                .Select(line => (line is ['.' or '\'', ..] ? "\\&" : "") + line + "\n")
        );
}
