using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Pens;

namespace ToolWear.Commands.Calls;

/// <summary>A verb: what is typed with it, what it does, and what its own help says behind the options.</summary>
/// <remarks>Verbs are made once and hold nothing of a call; the site comes with what is parsed.</remarks>
internal sealed class Verb : Command
{
    /// <summary>What help says of verbs that print sheets.</summary>
    public const string MakesSheet =
        "--as html makes a sheet to print, black on white, A4 or Letter: toolwear ... --as html > sheet.html";

    public Verb(
        string name,
        string does,
        string example,
        IEnumerable<Symbol> typed,
        Action<Call> run,
        string more = "",
        params ImmutableArray<string> prints
    )
        : base(name, does)
    {
        More = $"{more}{(more.Length == 0 ? "" : "\n\n")}Example:\n{Wrapped.Command($"toolwear {example}")}";
        Prints = prints;
        foreach (Symbol symbol in typed)
        {
            if (symbol is Argument argument)
            {
                Add(argument);
            }
            else
            {
                Add((Option)symbol);
            }
        }

        SetAction(parsed => Call.Run(parsed, run));
    }

    /// <summary>What its help says behind the options: more about it, and an example.</summary>
    public string More { get; }

    /// <summary>The formats it has besides text, csv and json.</summary>
    public ImmutableArray<string> Prints { get; }

    /// <summary>Whether it gives CSV where no format is named.</summary>
    public bool IsCsv { get; init; }
}
