using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Doors;
using ToolWear.Results.Eyes;
using ToolWear.Storage.Csv;

namespace ToolWear.Commands.Figures;

/// <summary>stock: what to cut off a bar for a tool.</summary>
internal static class StockVerb
{
    private static readonly Argument<string?> File = Said.Maybe(
        "FILE",
        "CSV: from_mark_mm, section, a_mm, b_mm, radius_mm, large_radius_mm"
    );
    private static readonly Option<ToolMark?> Like = Said.Tool(
        "--like",
        "TOOL",
        "a tool of the shop whose body is known, instead of FILE"
    );
    private static readonly Option<double?> Area = Said.Number(
        "--bar-area-mm2",
        "A",
        "the area of the bar in mm2",
        need: true
    );
    private static readonly Option<double?> Loss = Said.Number(
        "--loss",
        "S",
        "the share lost to scale and grinding, usually 0.07"
    );
    private static readonly Option<double?> Extra = Said.Number(
        "--extra-mm",
        "X",
        "for holding, kerf or crop in mm, usually 0"
    );

    public static Verb Verb { get; } =
        new(
            "stock",
            "Works out a tool's weight and the bar to cut for it.",
            "stock stations.csv --bar-area-mm2 804 --loss 0.07 --extra-mm 0",
            [File, Like, Area, Loss, Extra],
            Run
        );

    private static void Run(Call call)
    {
        Body body = ReadBody(call);
        if (
            !StockToCut.TryFor(
                body,
                call.Need(Area),
                call.Get(Loss) ?? StockLoss.Usual,
                call.Get(Extra) ?? 0,
                out StockToCut? stock,
                out string? refusal
            )
        )
        {
            throw RefusedException.WrongUsage(refusal);
        }

        call.Print(
            ReckonedTables.Cut.Of(stock),
            after: stock.MustBeUpset ? "The bar is smaller than the tool's largest section: it has to be upset.\n" : ""
        );
    }

    private static Body ReadBody(Call call)
    {
        IReadOnlyList<Station> stations = (call.Get(File), call.Get(Like)) switch
        {
            ({ } file, null) => OfFile(call, file),
            (null, { } mark) => OfTool(call.Tool(mark)),
            _ => throw RefusedException.WrongUsage("give one of FILE and --like TOOL"),
        };
        return Body.TryMake(stations, out Body? body, out string? refusal)
            ? body
            : throw RefusedException.WrongData(refusal);
    }

    private static ImmutableArray<Station> OfFile(Call call, string file)
    {
        TableRead<StationRow> read = PlainTables.Stations(NamedFiles.Read(NamedFiles.FullPath("FILE", file)));
        call.RefuseFaults(read.Faults, read.MoreFaults);
        return [.. read.Rows.Select(row => new Station(BodyPart.Body, row.FromMark, row.Section))];
    }

    private static ImmutableArray<Station> OfTool(ToolInShop tool) =>
        tool.Tool.Stations.IsEmpty
            ? throw RefusedException.WrongData($"{tool.Mark}: its body sizes are not on record")
            : tool.Tool.Stations;
}
