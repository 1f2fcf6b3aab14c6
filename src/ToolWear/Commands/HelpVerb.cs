using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using ToolWear.Commands.Calls;
using ToolWear.Core.Measure;
using ToolWear.Doors;
using ToolWear.Pens;

namespace ToolWear.Commands;

/// <summary>help: the everyday verbs, all verbs, what to type when, or one verb; the library lays it out.</summary>
internal static class HelpVerb
{
    private const string AllVerbs = "all";
    private const string WhatWhen = "examples";
    private const string HowToType = "typing";
    private const int Names = 15;

    private static readonly Argument<string?> What = Said.Maybe(
            "WHAT",
            "a verb; or all: every verb; examples: what to type when; typing: how to type sizes and days"
        )
        .Offering(typed =>
            [AllVerbs, WhatWhen, HowToType, .. typed.RootCommandResult.Command.Subcommands.Select(verb => verb.Name)]
        );

    /// <summary>What to type when.</summary>
    internal static ImmutableArray<(string When, string Line)> Examples { get; } =
    [
        ("The first evening", "import my-tools.csv --try"),
        ("Before the first heat", "look-over H5 sound --by Ada"),
        ("At the hammer", "heats H5 3"),
        ("The end of the evening", "close-session --heads 6"),
        ("The morning after", "to-measure"),
        ("... caliper in hand", "measure H5 width 13.55"),
        ("Which tool to use next", "rack"),
        ("A slitter was dressed", "rework HS2 dressed"),
        ("A tool cracked", "look-over H5 cracked"),
        ("A typing slip", "cross-out 212 \"jaw on scale\""),
        ("A big order came in", "order fair --pattern hatchet --heads 18 --due 2027-04-01"),
    ];

    /// <summary>How to type what is read: each with words that are read so.</summary>
    internal static ImmutableArray<(string What, string Such, string Says)> Typed { get; } =
    [
        ("Sizes", "36.5; 36,5 mm; 1.44\"; 1 7/16", "A bare number is in the shop's unit, a fraction in inches."),
        ("Days", "2026-05-01; 1.5.2026; 1.5.; 31 Oct; yesterday; monday", "Without a year: the last such day."),
        ("Days to come", "tomorrow; friday; +28; 1.5.", "Due days. Without a year: the next such day."),
        ("Heats", "3; 2.5; 2 1/2; 2½", "Whole or half heats."),
        ("Shares", "0.9; 90%", "How sure a plan is to be."),
    ];

    private static readonly ImmutableArray<(string, string)> More =
    [
        ("toolwear", "Opens the screens on your shop."),
        ("toolwear demo", "Opens them on an invented shop, to try things out."),
        ("toolwear help VERB", "Explains one verb, with its options and an example."),
        ("toolwear help all", "Lists every verb, and the options that all verbs have."),
        ("toolwear help examples", "Says what to type when."),
        ("toolwear help typing", "Shows how to type sizes, days and heats."),
        ("toolwear guide", "Goes through it step by step."),
    ];

    public static Verb Verb { get; } = new("help", "Explains a verb, or lists them all.", "help order", [What], Run);

    /// <summary>A page of the program's help.</summary>
    /// <param name="program">The whole command line.</param>
    /// <param name="width">Columns of the terminal.</param>
    /// <param name="page">Which page; null for the everyday verbs.</param>
    /// <returns>Lines, each with its line end.</returns>
    private static string Page(Command program, int width, string? page)
    {
        return page switch
        {
            WhatWhen => string.Concat(Examples.Select(each => $"{each.When}:\n  toolwear {each.Line}\n")),
            AllVerbs => string.Concat(Verbs.Groups.Select(group => Rows(group.Name, Names, Lines(group.Verbs))))
                + Rows(
                    "Options of every verb",
                    24,
                    program.Options.Select(option => ($"{option.Name} {option.HelpName}", option.Description!))
                ),
            HowToType => string.Concat(
                Typed.Select(each => Row(each.What, each.Such + "\n", Names) + Row("", each.Says, Names))
            )
                + Wrapped.Of(
                    "Marks of tools and gauge marks: capitals do not matter where only one fits. \"-\" as a file is what comes in by a pipe, or goes out by it.",
                    width: width
                ),
            _ => Wrapped.Of(program.Description!, width: width)
                + "\n"
                + string.Concat(
                    Verbs
                        .Groups.Where(group => group.Everyday > 0)
                        .Select(group => Rows(group.Name, Names, Lines(group.Verbs.Take(group.Everyday))))
                )
                + Rows("More", 24, More),
        };

        string Rows(string heading, int names, IEnumerable<(string Name, string Says)> rows) =>
            $"{heading}:\n{string.Concat(rows.Select(row => Row(row.Name, row.Says, names)))}\n";

        string Row(string name, string says, int names) =>
            Wrapped.Of(says, $"  {name.PadRight(names - 1)} ", new string(' ', names + 2), width);
    }

    private static IEnumerable<(string, string)> Lines(IEnumerable<Verb> verbs) =>
        verbs.Select(verb => (verb.Name, verb.Description!));

    private static void Run(Call call)
    {
        string? name = call.Get(What);
        if (name is null or AllVerbs or WhatWhen or HowToType)
        {
            call.Print(Page(call.Program, call.Site.Width, name));
            return;
        }

        if (!call.Program.Subcommands.Any(verb => verb.Name == name))
        {
            throw RefusedException.WrongUsage(
                NearNames.Refusal("verb", name, call.Program.Subcommands.Select(verb => verb.Name))
            );
        }

        call.ExitCode = Verbs.Run(call.Site, [name, "--help"]);
    }

    /// <summary>What --help shows: of a verb in the library's columns, then more about it and its example.</summary>
    internal sealed class Asked : SynchronousCommandLineAction
    {
        /// <inheritdoc />
        public override int Invoke(ParseResult parseResult)
        {
            int width = ((Parsing)parseResult.Configuration).Site.Width;
            TextWriter output = parseResult.InvocationConfiguration.Output;
            if (parseResult.CommandResult.Command is not Verb verb)
            {
                output.Write(Page(parseResult.CommandResult.Command, width, null));
                return 0;
            }

            int exit = new HelpAction { MaxWidth = width }.Invoke(parseResult);
            output.Write(Wrapped.Lines(verb.More, width));
            return exit;
        }
    }
}
