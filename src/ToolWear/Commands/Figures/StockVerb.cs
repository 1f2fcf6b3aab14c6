using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Results;
using ToolWear.Storage.Csv;

namespace ToolWear.Commands.Figures;

/// <summary>stock: what to cut off a bar for a tool.</summary>
internal static class StockVerb
{
    private static readonly Argument<string> File = FigureOptions.Maybe(
        "FILE",
        "CSV: from_mark_mm, section, a_mm, b_mm, radius_mm, large_radius_mm"
    );
    private static readonly Option<string?> Like = Common.Text(
        "--like",
        "TOOL",
        "a tool of the shop whose body is known, instead of FILE"
    );
    private static readonly Option<string?> Area = Common.Text("--bar-area-mm2", "A", "the area of the bar in mm2");
    private static readonly Option<string?> Loss = Common.Text(
        "--loss",
        "S",
        "the share lost to scale and grinding, usually 0.07"
    );
    private static readonly Option<string?> Extra = Common.Text(
        "--extra-mm",
        "X",
        "for holding, kerf or crop in mm, usually 0"
    );

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "stock",
            "Works out the volume and the weight of a tool, and the length of bar to cut for it.",
            "stock stations.csv --bar-area-mm2 804 --loss 0.07 --extra-mm 0",
            [File, Like, Area, Loss, Extra],
            Run
        );

    private static void Run(Call call)
    {
        double area = call.Need(Area);
        Body body = ReadBody(call);
        if (
            !StockToCut.TryFor(
                body,
                area,
                call.Or(Loss, StockLoss.Usual),
                call.Or(Extra, 0),
                out StockToCut? stock,
                out string? refusal
            )
        )
        {
            throw RefusedException.WrongUsage(refusal);
        }

        call.Print(
            new Calculated([
                new("volume_mm3", "Volume, mm3", Cell.Of(stock.VolumeMm3, FigureOptions.Decimals(0))),
                new("mass_kg", "Weight, kg", Cell.Of(stock.MassKg, FigureOptions.Decimals(2))),
                new("length_mm", "Length of bar, mm", Cell.Of(stock.LengthMm, FigureOptions.Decimals(0))),
            ]),
            stock.MustBeUpset ? Words.MustBeUpset + "\n" : ""
        );
    }

    private static Body ReadBody(Call call)
    {
        if ((call.Get(File).Length > 0) == (call.Get(Like) is not null))
        {
            throw RefusedException.WrongUsage("one of FILE and --like TOOL is wanted");
        }

        IReadOnlyList<Station> stations = call.Get(Like) is { } mark ? OfTool(call, mark) : OfFile(call);
        return Body.TryMake(stations, out Body? body, out string? refusal)
            ? body
            : throw RefusedException.WrongData(refusal);
    }

    private static ImmutableArray<Station> OfFile(Call call)
    {
        TableRead<StationRow> read = PlainTables.Stations(NamedFiles.Read(NamedFiles.FullPath("FILE", call.Get(File))));
        call.RefuseFaults(read.Faults, read.MoreFaults);
        return [.. read.Rows.Select(row => new Station(BodyPart.Body, row.FromMark, row.Section))];
    }

    private static ImmutableArray<Station> OfTool(Call call, string mark)
    {
        using Bench bench = call.ToRead();
        ToolInShop tool = Call.Find(bench.Shop, Call.ReadMark(mark));
        return tool.Tool.Stations.IsEmpty
            ? throw RefusedException.WrongData($"{tool.Mark}: the stations of its body are not entered")
            : tool.Tool.Stations;
    }
}
