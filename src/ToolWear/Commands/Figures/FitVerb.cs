using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Histories;
using ToolWear.Doors;
using ToolWear.Results.Tools;
using ToolWear.Storage.Csv;
using ToolWear.Wording;

namespace ToolWear.Commands.Figures;

/// <summary>fit: the forecasts of any CSV of readings, with no store.</summary>
internal static class FitVerb
{
    private static readonly Option<string?> Readings = Said.File(
        "--readings",
        "CSV: kind, group, tool, segment, start_mm, heats, wear_mm"
    );
    private static readonly Option<string?> Tools = Said.File(
        "--tools",
        "CSV: kind, group, tool, limit_mm, resolution_mm, guess_heats, heats_now"
    );

    public static Verb Verb { get; } =
        new(
            "fit",
            "Forecasts wear from any CSV of readings.",
            "fit --readings readings.csv --tools tools.csv --as csv",
            [Readings, Tools],
            Run,
            "It needs no shop. The columns of the result are those of forecast."
        );

    /// <summary>Reads the histories that two options name.</summary>
    public static ImmutableArray<WearHistory> Histories(Call call, Option<string?> ofReadings, Option<string?> ofTools)
    {
        TableRead<WearReadingRow> readings = PlainTables.Readings(Read(call, ofReadings));
        call.RefuseFaults(readings.Faults, readings.MoreFaults);
        TableRead<WearToolRow> tools = PlainTables.Tools(Read(call, ofTools));
        call.RefuseFaults(tools.Faults, tools.MoreFaults);
        return FittedHistories.Of(readings.Rows, tools.Rows);
    }

    private static void Run(Call call)
    {
        ImmutableArray<WearHistory> histories = Histories(call, Readings, Tools);
        call.Print(
            ForecastTable.Columns.Over(Forecasted.InOrder(histories).Select(each => new ForecastRow(each))),
            after: $"\n{Words.NotFollowedMark} {Words.NotFollowed}\n{Cautions.ForecastCaution}\n"
        );
    }

    private static CsvFile Read(Call call, Option<string?> option) =>
        NamedFiles.Read(NamedFiles.FullPath(option.Name, call.Get(option)!));
}
