using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace ToolWear.Commands.Calls;

/// <summary>A verb with what its own help says behind the options: more about it, and an example.</summary>
internal sealed class VerbCommand(string name, string does, string example, string more) : Command(name, does)
{
    public string Example => example;

    public string More => more;

    /// <summary>The formats it has besides text, csv and json.</summary>
    public ImmutableArray<string> Prints { get; init; } = [];

    /// <summary>Lets every help end with more about the verb and its example.</summary>
    public static void ExtendHelp(RootCommand root)
    {
        foreach (HelpOption help in root.Options.OfType<HelpOption>())
        {
            if (help.Action is HelpAction usual)
            {
                help.Action = new WithExample(usual);
            }
        }
    }

    private sealed class WithExample(HelpAction usual) : SynchronousCommandLineAction
    {
        public override int Invoke(ParseResult parseResult)
        {
            int exit = usual.Invoke(parseResult);
            if (parseResult.CommandResult.Command is VerbCommand verb)
            {
                TextWriter output = parseResult.InvocationConfiguration.Output;
                output.Write(verb.More.Length == 0 ? "" : verb.More + "\n\n");
                output.Write($"Example:\n  toolwear {verb.Example}\n");
            }

            return exit;
        }
    }
}
