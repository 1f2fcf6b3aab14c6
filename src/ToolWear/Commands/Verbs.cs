using System.CommandLine;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using ToolWear.Commands.Calls;
using ToolWear.Commands.Evening;
using ToolWear.Commands.Figures;
using ToolWear.Commands.Files;
using ToolWear.Commands.Plans;
using ToolWear.Commands.Tools;

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
            // no response files: @FILE is a text like any other
            ParserConfiguration configuration = new() { ResponseFileTokenReplacer = null };
            ParseResult parsed = Root(site).Parse(arguments, configuration);
            // who asks for help gets it, whatever else is missing
            return parsed.Action is ParseErrorAction
                    ? WrongUsage(site, parsed, parsed.Errors.Select(error => error.Message))
                : MistypedOption(parsed) is { } option ? WrongUsage(site, parsed, [Words.NoSuchOption(option)])
                : parsed.Invoke(Streams(site));
        }
#pragma warning disable CA1031 // whatever went wrong inside, the user gets one line and never a stack trace
        catch (Exception e)
#pragma warning restore CA1031
        {
            site.Error.WriteLine(Words.Bug(e));
            return Bug;
        }
    }

    private static InvocationConfiguration Streams(Site site) =>
        new()
        {
            Output = site.Out,
            Error = site.Error,
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
        string verb = parsed.CommandResult.Command is RootCommand ? "" : parsed.CommandResult.Command.Name + " ";
        foreach (string fault in faults)
        {
            site.Error.WriteLine(Words.Refusal(fault));
        }

        site.Error.WriteLine(Words.SeeHelp(verb));
        return RefusedException.UsageExit;
    }

    private static RootCommand Root(Site site)
    {
        RootCommand root = new(Words.HelpProgram) { Common.Store, Common.Units, Common.As, Common.On, Common.Alone };
        foreach (Command verb in All(site))
        {
            root.Add(verb);
        }

        VerbCommand.ExtendHelp(root);
        Completing.Teach(site, root);
        root.SetAction(parsed =>
            Call.RunToCode(site, parsed, call => Screens.Evening.Run(site, call.StorePath, call.DayIfNamed))
        );
        return root;
    }

    private static IEnumerable<Command> All(Site site) =>
        [
            DemoVerb.Make(site),
            ImportVerb.Make(site),
            ExportVerb.Make(site),
            ExportHistoryVerb.Make(site),
            AddToolVerb.Make(site),
            OpenSessionVerb.Make(site),
            HeatsVerb.Make(site),
            CloseSessionVerb.Make(site),
            MeasureVerb.Make(site),
            ReworkVerb.Make(site),
            LookOverVerb.Make(site),
            .. StateVerbs.Make(site),
            .. LoanVerbs.Make(site),
            StockTakeVerb.Make(site),
            ScrapVerb.Make(site),
            OrderVerb.Make(site),
            SetVerb.Make(site),
            CrossOutVerb.Make(site),
            RackVerb.Make(site),
            CardVerb.Make(site),
            HandOverVerb.Make(site),
            ForecastVerb.Make(site),
            ToMeasureVerb.Make(site),
            LedgerVerb.Make(site),
            SettingsVerb.Make(site),
            FitVerb.Make(site),
            CompareGroupsVerb.Make(site),
            CompareVerb.Make(site),
            TrialsVerb.Make(site),
            LifetimesVerb.Make(site),
            SectionVerb.Make(site),
            InsideVerb.Make(site),
            EyeVerb.Make(site),
            DriveDepthVerb.Make(site),
            SlitVerb.Make(site),
            StockVerb.Make(site),
            MakeIntoVerb.Make(site),
            EyesVerb.Make(site),
            SeriesVerb.Make(site),
            PatternsVerb.Make(site),
            BarsVerb.Make(site),
            PlanVerb.Make(site),
            ForgeListVerb.Make(site),
            CostsVerb.Make(site),
            QuoteVerb.Make(site),
            YearVerb.Make(site),
            PullEarlyVerb.Make(site),
            HeatSplitVerb.Make(site),
            CheckVerb.Make(site),
            BackupVerb.Make(site),
            RestoreVerb.Make(site),
            ColumnsVerb.Make(site),
            CompletionVerb.Make(site),
        ];
}
