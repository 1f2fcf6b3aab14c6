using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Lifetimes;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Looks;
using ToolWear.Storage.Csv;
using ToolWear.Wording;

namespace ToolWear.Commands.Figures;

/// <summary>lifetimes: how long tools last until they fail suddenly.</summary>
internal static class LifetimesVerb
{
    private static readonly Argument<string> File = new("FILE")
    {
        Description = "CSV: tool, heats, failed (1 or 0), from_heats",
    };
    private static readonly Option<double?> Guess = Said.Number(
        "--guess-heats",
        "N",
        "how many heats such a tool usually lasts, usually 60",
        guess => GuessedLife.Refusal("--guess-heats", guess)
    );

    public static Verb Verb { get; } =
        new(
            "lifetimes",
            "Shows how many tools outlive how many heats.",
            "lifetimes slitters.csv --guess-heats 200",
            [File, Guess],
            Run,
            "Only tools that cracked or broke have failed; those worn out or still in service have not. As csv it gives the steps of the curve."
        );

    private static void Run(Call call)
    {
        TableRead<LifetimeRow> read = PlainTables.Lifetimes(
            NamedFiles.Read(NamedFiles.FullPath("FILE", call.Get(File)!))
        );
        call.RefuseFaults(read.Faults, read.MoreFaults);
        ImmutableArray<WatchedLife> lives =
        [
            .. read.Rows.Select(row => new WatchedLife(row.Heats, row.Failed, row.FromHeats)),
        ];
        SuddenFailures failures = SuddenFailures.Of(lives, call.Get(Guess) ?? GuessedLife.Assumed);
        ImmutableArray<SurvivalStep> steps = SurvivalCurve.Of(lives);
        Table survival = LifetimeTable.Columns.Over(steps);
        call.Print(
            call.Format switch
            {
                "csv" => survival.ToCsv(call.HasSemicolons),
                "json" => LifetimeTable.All.Of(new(lives.Length, failures, steps)).ToJson(),
                _ => Text(call, lives.Length, failures, survival),
            }
        );
    }

    private static string Text(Call call, int tools, SuddenFailures failures, Table survival)
    {
        string fit = failures.Fit switch
        {
            WeibullFit f => FailureCurve(f),
            NotEnoughData missing => Words.Missing(missing),
            _ => "",
        };
        return $"{tools} tools, {failures.Failures} failed suddenly\n\n"
            + (survival.Rows.IsEmpty ? "" : call.Text(survival) + "\n")
            + $"{FailureCurve(failures.WithPrior)}\n{fit}\n{Cautions.ForecastCaution}\n";
    }

    private static string FailureCurve(WeibullFit fit) =>
        $"By the failures alone: half have failed by {Words.About(fit.HeatsAtFailed(0.5))} heats, one in ten by {Words.About(fit.HeatsAtFailed(0.1))}"
        + (
            fit.Failures < WeibullFit.EnoughFailures
                ? $"; it rests on {fit.Failures} failures, fewer than {WeibullFit.EnoughFailures}, and is too sure of itself."
                : "."
        );

    private static string FailureCurve(WeibullWithPrior curve) =>
        $"From what is common and these records: half have failed by {Words.About(curve.MedianLife)} heats, one in ten by {Words.About(curve.B10)}.";
}
