using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using ToolWear.Commands.Calls;
using ToolWear.Commands.Evening;
using ToolWear.Commands.Figures;
using ToolWear.Commands.Files;
using ToolWear.Commands.Plans;
using ToolWear.Commands.Tools;
using ToolWear.Core.Measure;
using ToolWear.Doors;
using ToolWear.Wording;

namespace ToolWear.Commands;

/// <summary>The command line: every verb, and how wrong usage is answered.</summary>
public static class Verbs
{
    /// <summary>The exit code of a bug.</summary>
    public const int Bug = 70;

    /// <summary>Runs a command line.</summary>
    /// <param name="world">The world around.</param>
    /// <param name="arguments">What was typed behind the program's name.</param>
    /// <returns>The exit code: 0 done, 1 wrong data or failed check, 2 wrong usage, 70 a bug.</returns>
    public static int Run(Site world, IReadOnlyList<string> arguments)
    {
        Site site = world with { Out = new HarmlessWriter(world.Out), Error = new HarmlessWriter(world.Error) };
        try
        {
            if (arguments is [['[', 's', 'u', 'g', 'g', 'e', 's', 't', ':', .. var at, ']'], var line])
            {
                string typed = int.TryParse(at, out int end) && end < line.Length ? line[..Math.Max(0, end)] : line;
                site.Out.Write(
                    Offers.Of(
                        Root.Parse(typed, new Parsing(site)),
                        typed.TrimEnd() is { Length: > 0 } bare && bare == typed
                    )
                );
                return 0;
            }

            ParseResult parsed = Root.Parse(arguments, new Parsing(site));
            // who asks for help gets it, whatever else is missing
            return MistypedOption(parsed) is { } option ? WrongUsage(site, parsed, [NoSuchOption(parsed, option)])
                : parsed.Action is ParseErrorAction ? WrongUsage(site, parsed, Faults(parsed))
                : parsed.Invoke(Streams(site.Out, site.Error));
        }
#pragma warning disable CA1031 // whatever went wrong inside, the user gets one line and never a stack trace
        catch (Exception e)
#pragma warning restore CA1031
        {
            site.Error.WriteLine(
                $"toolwear: this is a fault of the program, not yours: {e.GetType().Name}: "
                    + $"{e.Message.ReplaceLineEndings(" ")}. What was recorded is safe."
            );
            return Bug;
        }
    }

    private static InvocationConfiguration Streams(TextWriter output, TextWriter error) =>
        new()
        {
            Output = output,
            Error = error,
            EnableDefaultExceptionHandler = false,
        };

    /// <summary>An option that no verb has, which was taken for a text; what is meant as a text follows a bare "--".</summary>
    private static string? MistypedOption(ParseResult parsed) =>
        parsed.Tokens.Any(token => token.Type == TokenType.DoubleDash)
            ? null
            : parsed
                .CommandResult.Children.OfType<ArgumentResult>()
                .SelectMany(argument => argument.Tokens)
                .Select(token => token.Value)
                .FirstOrDefault(text => text.Length > 2 && text.StartsWith("--", StringComparison.Ordinal));

    private static int WrongUsage(Site site, ParseResult parsed, IEnumerable<string> faults)
    {
        foreach (string fault in faults)
        {
            site.Error.WriteLine(Words.Refusal(fault));
        }

        string verb = parsed.CommandResult.Command is Verb ? parsed.CommandResult.Command.Name + " " : "";
        site.Error.WriteLine(SeeHelp(verb));
        return RefusedException.UsageExit;
    }

    /// <summary>What is wrong with a line: what nothing has a use for, what is missing, what cannot be read.</summary>
    private static IEnumerable<string> Faults(ParseResult parsed)
    {
        Command command = parsed.CommandResult.Command;
        IReadOnlyList<string> tokens = parsed.UnmatchedTokens;
        Option[] missing =
        [
            .. command.Options.Where(option => option.Required && parsed.GetResult(option) is not { Implicit: false }),
        ];
        return command is Verb
                ? tokens
                    .Select(token =>
                        token.StartsWith('-')
                            ? NoSuchOption(parsed, token)
                            : $"{command.Name} has no use for \"{token}\". Put a text of several words in quotes."
                    )
                    .Concat(
                        parsed
                            .Errors.Where(error =>
                                !tokens
                                    .Concat(missing.Select(option => option.Name))
                                    .Any(token => error.Message.Contains($"'{token}'", StringComparison.Ordinal))
                            )
                            .Select(error =>
                                error.SymbolResult switch
                                {
                                    ArgumentResult { Tokens.Count: 0, Argument: var it } =>
                                        $"Give {it.Name}: {it.Description}.",
                                    OptionResult { Tokens.Count: 0, Option: var it } => Give(it),
                                    _ => error.Message,
                                }
                            )
                    )
                    .Concat(missing.Select(Give))
            : tokens.Count == 0 ? parsed.Errors.Select(error => error.Message)
            :
            [
                tokens[0].StartsWith('-')
                    ? NoSuchOption(parsed, tokens[0])
                    : $"No verb \"{tokens[0]}\". {NearNames.Meant(tokens[0], command.Subcommands.Select(verb => verb.Name))}".TrimEnd(),
            ];
    }

    private static RootCommand Made()
    {
        RootCommand root = new(
            "ToolWear keeps track of the wear of your hot-work tooling: drifts, slitters, punches, fullers. It says which "
                + "are inside their limits, about how many heats each has left, and what to measure next."
        )
        {
            Said.Store,
            Said.Units,
            Said.As,
            Said.Wide,
            Said.Semicolon,
            Said.On,
            Said.Alone,
            Said.Once,
            Said.Quiet,
        };
        foreach (Verb verb in Groups.SelectMany(group => group.Verbs))
        {
            root.Add(verb);
            Offers.Files([.. verb.Arguments, .. verb.Options]);
        }

        Offers.Files(root.Options);

        foreach (HelpOption help in root.Options.OfType<HelpOption>())
        {
            help.Action = new HelpVerb.Asked();
        }

        root.SetAction(parsed =>
            Call.Run(
                parsed,
                call =>
                    call.ExitCode =
                        call.On > call.Site.Today
                            ? throw RefusedException.WrongUsage(
                                $"--on {call.On:yyyy-MM-dd} lies in the future: today is {call.Site.Today:yyyy-MM-dd} by this "
                                    + "computer's clock. Leave --on out, or name a day up to today."
                            )
                            : Screens.Running.Evening.Run(call.Site, call.StorePath, call.SaidOn)
            )
        );
        return root;
    }

    /// <summary>Every verb by what it is for; the everyday ones come first.</summary>
    internal static ImmutableArray<(string Name, int Everyday, ImmutableArray<Verb> Verbs)> Groups { get; } =
    [
        (
            "The evening",
            6,
            [
                OpenSessionVerb.Verb,
                HeatsVerb.Verb,
                CloseSessionVerb.Verb,
                ToMeasureVerb.Verb,
                MeasureVerb.Verb,
                LookOverVerb.Verb,
                HandOverVerb.Verb,
                LedgerVerb.Verb,
                CrossOutVerb.Verb,
            ]
        ),
        (
            "What I have",
            4,
            [
                RackVerb.Verb,
                CardVerb.Verb,
                AddToolVerb.Verb,
                ReworkVerb.Verb,
                ScrapVerb.Verb,
                MakeIntoVerb.Verb,
                .. StateVerbs.All,
                CorrectVerb.Verb,
                .. LoanVerbs.All,
                StockTakeVerb.Verb,
                ForecastVerb.Verb,
                EyesVerb.Verb,
                SeriesVerb.Verb,
                BarsVerb.Verb,
            ]
        ),
        (
            "Planning",
            2,
            [
                ForgeListVerb.Verb,
                OrderVerb.Verb,
                PlanVerb.Verb,
                PatternsVerb.Verb,
                CostsVerb.Verb,
                QuoteVerb.Verb,
                YearVerb.Verb,
                LossesVerb.Verb,
                PullEarlyVerb.Verb,
                HeatSplitVerb.Verb,
                TrialsVerb.Verb,
                CompareVerb.Verb,
            ]
        ),
        (
            "Files",
            3,
            [
                ImportVerb.Verb,
                ExportVerb.Verb,
                BackupVerb.Verb,
                RestoreVerb.Verb,
                CheckVerb.Verb,
                ExportHistoryVerb.Verb,
                TemplateVerb.Verb,
                ColumnsVerb.Verb,
            ]
        ),
        (
            "From figures alone",
            0,
            [
                EyeVerb.Verb,
                DriveDepthVerb.Verb,
                SlitVerb.Verb,
                SectionVerb.Verb,
                InsideVerb.Verb,
                StockVerb.Verb,
                FitVerb.Verb,
                CompareGroupsVerb.Verb,
                LifetimesVerb.Verb,
            ]
        ),
        (
            "The program",
            0,
            [
                HelpVerb.Verb,
                GuideVerb.Verb,
                DemoVerb.Verb,
                SettingsVerb.Verb,
                SetVerb.Verb,
                CompletionVerb.Verb,
                ManVerb.Verb,
            ]
        ),
    ];

    // behind the groups, of which it is made
    private static readonly RootCommand Root = Made();

    private static string Give(Option option) => $"Give {option.Name} {option.HelpName}: {option.Description}.";

    private static string NoSuchOption(ParseResult parsed, string option) =>
        NearNames.Meant(
            option,
            parsed
                .CommandResult.Command.Options.Concat(parsed.RootCommandResult.Command.Options)
                .Select(each => each.Name)
        )
            is { Length: > 0 } meant
            ? $"No option \"{option}\". {meant}"
            : $"No option \"{option}\". Put a text that begins so behind a bare --.";

    private static string SeeHelp(string verb) => $"\"toolwear {verb}--help\" shows how.";
}
