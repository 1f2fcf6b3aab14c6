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
using ToolWear.Doors;
using ToolWear.Wording;

namespace ToolWear.Commands;

/// <summary>The command line: every verb, and how wrong usage is answered.</summary>
public static class Verbs
{
    /// <summary>The exit code of a bug.</summary>
    public const int Bug = 70;

    private static readonly RootCommand Root = Made();

    /// <summary>Runs a command line.</summary>
    /// <param name="world">The world around.</param>
    /// <param name="arguments">What was typed behind the program's name.</param>
    /// <returns>The exit code: 0 done, 1 wrong data or failed check, 2 wrong usage, 70 a bug.</returns>
    public static int Run(Site world, IReadOnlyList<string> arguments)
    {
        Site site = world with { Out = new HarmlessWriter(world.Out), Error = new HarmlessWriter(world.Error) };
        try
        {
            ParseResult parsed = Root.Parse(arguments, new Parsing(site));
            // who asks for help gets it, whatever else is missing
            return MistypedOption(parsed) is { } option ? WrongUsage(site, parsed, [NoSuchOption(option)])
                : parsed.Action is ParseErrorAction
                    ? WrongUsage(site, parsed, parsed.Errors.Select(error => error.Message))
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

        if (parsed.Action is ParseErrorAction hints)
        {
            // the library's own "did you mean"; it goes to the output unless told otherwise
            hints.ShowHelp = false;
            using StringWriter said = new();
            parsed.Invoke(Streams(said, TextWriter.Null));
            // it repeats what was typed, as it was typed
            site.Error.Write(said.ToString().ReplaceLineEndings().Replace('\t', '\uFFFD'));
        }

        string verb = parsed.CommandResult.Command is Verb ? parsed.CommandResult.Command.Name + " " : "";
        site.Error.WriteLine(SeeHelp(verb));
        return RefusedException.UsageExit;
    }

    private static RootCommand Made()
    {
        RootCommand root = new(
            "ToolWear keeps the wear of a smith's hot-work tooling: drifts, slitters, punches, fullers. It says which are\n"
                + "inside their limits, how many heats are left in each, and what to measure next.\n\n"
                + "Sizes: a mark wins (36.5 mm, 1.44\"), a fraction is inches (1 7/16), a bare number is in the shop's unit."
        )
        {
            Said.Store,
            Said.Units,
            Said.As,
            Said.Semicolon,
            Said.On,
            Said.Alone,
            Said.Once,
            Said.Quiet,
        };
        foreach (Verb verb in All)
        {
            root.Add(verb);
        }

        foreach (HelpOption help in root.Options.OfType<HelpOption>())
        {
            help.Action = new Verb.Help((HelpAction)help.Action!);
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

    private static IEnumerable<Verb> All =>
        [
            DemoVerb.Verb,
            ImportVerb.Verb,
            ExportVerb.Verb,
            ExportHistoryVerb.Verb,
            TemplateVerb.Verb,
            AddToolVerb.Verb,
            OpenSessionVerb.Verb,
            HeatsVerb.Verb,
            CloseSessionVerb.Verb,
            MeasureVerb.Verb,
            ReworkVerb.Verb,
            LookOverVerb.Verb,
            .. StateVerbs.All,
            .. LoanVerbs.All,
            StockTakeVerb.Verb,
            ScrapVerb.Verb,
            OrderVerb.Verb,
            SetVerb.Verb,
            CrossOutVerb.Verb,
            RackVerb.Verb,
            CardVerb.Verb,
            HandOverVerb.Verb,
            ForecastVerb.Verb,
            ToMeasureVerb.Verb,
            LedgerVerb.Verb,
            SettingsVerb.Verb,
            FitVerb.Verb,
            CompareGroupsVerb.Verb,
            CompareVerb.Verb,
            TrialsVerb.Verb,
            LifetimesVerb.Verb,
            SectionVerb.Verb,
            InsideVerb.Verb,
            EyeVerb.Verb,
            DriveDepthVerb.Verb,
            SlitVerb.Verb,
            StockVerb.Verb,
            MakeIntoVerb.Verb,
            EyesVerb.Verb,
            SeriesVerb.Verb,
            PatternsVerb.Verb,
            BarsVerb.Verb,
            PlanVerb.Verb,
            ForgeListVerb.Verb,
            CostsVerb.Verb,
            QuoteVerb.Verb,
            YearVerb.Verb,
            LossesVerb.Verb,
            PullEarlyVerb.Verb,
            HeatSplitVerb.Verb,
            CheckVerb.Verb,
            BackupVerb.Verb,
            RestoreVerb.Verb,
            ColumnsVerb.Verb,
            CompletionVerb.Verb,
            GuideVerb.Verb,
            ManVerb.Verb,
        ];

    private static string NoSuchOption(string option) =>
        $"there is no option {option}; a text that begins so goes behind a bare --";

    private static string SeeHelp(string verb) => $"\"toolwear {verb}--help\" shows how it is used";
}
