using System.CommandLine;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Results;
using ToolWear.Tables;

namespace ToolWear.Commands;

/// <summary>drive-depth: how much deeper a worn drift is driven.</summary>
internal static class DriveDepthVerb
{
    private static readonly Argument<string> Tool = FigureOptions.Maybe(
        "TOOL",
        "a drift of the shop, for its new mark"
    );
    private static readonly Option<string?> Worn = Common.Text("--worn-mm", "W", "the wear to make up in mm");
    private static readonly Option<string?> TaperOption = Common.Text(
        "--taper",
        "Q",
        "mm of size a mm of depth, over the whole width"
    );
    private static readonly Option<string?> NoseRoom = Common.Text(
        "--nose-room-mm",
        "R",
        "how much deeper the nose can go, with a TOOL"
    );

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "drive-depth",
            "Works out how much deeper a tapered drift is driven to make up for wear: from two figures, or for a tool\n"
                + $"with the tolerance of its eye. {Words.EyeCaution}",
            "drive-depth --worn-mm 0.3 --taper 0.03",
            [Tool, Worn, TaperOption, NoseRoom],
            Run
        );

    private static void Run(Call call)
    {
        if (call.Get(Tool).Length > 0)
        {
            OfTool(call);
            return;
        }

        if (!Taper.TryShift(call.Need(Worn), call.Need(TaperOption), out double shift, out string? refusal))
        {
            throw RefusedException.WrongUsage(refusal);
        }

        call.Print(
            new Calculated([new("shift_mm", "Deeper by, mm", Cell.Of(shift, FigureOptions.Decimals(1)))]),
            $"{Words.EyeCaution}\n"
        );
    }

    private static void OfTool(Call call)
    {
        using Bench bench = call.ToRead();
        Shop shop = bench.Shop;
        ToolInShop tool = Call.Find(shop, Call.ReadMark(call.Get(Tool)));
        string missing = $"{tool.Mark}: ";
        EyeDescribed eye =
            (tool.Tool.Eye is { } name ? shop.Eyes.GetValueOrDefault(name) : null)
            ?? throw RefusedException.WrongData(missing + "its eye is not entered");
        EyeSize now =
            EyeNow.Of(shop, ShopForecasts.Of(shop).All[tool.Id])
            ?? throw RefusedException.WrongData(missing + "its length and width are not both known, or it is no drift");
        DriveDepth depth = DriveDepths.Choose(Drift(call, shop, tool.Tool), now, Tolerance(eye));
        if (depth is NoDepth none)
        {
            throw RefusedException.WrongData($"{tool.Mark} is at its end. {none.Why}");
        }

        DriveTo to = (DriveTo)depth;
        LengthUnit units = call.Units(shop);
        string Shown(double mm) => SizeShown.Eye(Length.FromMm(mm), units);
        call.Print(
            new Calculated([
                new("shift_mm", "Deeper by", Cell.Of(to.DeeperMm, FigureOptions.Decimals(1))),
                new(
                    "mark_mm",
                    "New mark, from the shank mark",
                    Cell.Of(to.Mark.Mm, _ => SizeShown.Eye(to.MarkIn64ths, units))
                ),
                new("eye_length_mm", "Eye length there", Cell.Of(to.Eye.LengthMm, Shown)),
                new("eye_width_mm", "Eye width there", Cell.Of(to.Eye.WidthMm, Shown)),
            ]),
            $"{Words.EyeCaution}\n"
        );
    }

    private static TaperedDrift Drift(Call call, Shop shop, Tool tool)
    {
        Series? series = shop.SeriesOf(tool);
        Length mark =
            tool.GaugeMarks.FirstOrDefault(gauge => gauge.Measures == Measures.Width)?.FromMark
            ?? throw RefusedException.WrongData(
                $"{tool.Mark}: where its width is measured from the shank mark is not entered"
            );
        Length? full = tool.Stations.LastOrDefault(station => station.Part == BodyPart.FullSize)?.FromMark;
        return TaperedDrift.TryMake(
            series?.TaperLength ?? 0,
            series?.TaperWidth ?? 0,
            mark,
            full is { } from && from < mark ? mark - from : Length.Zero,
            call.Get(NoseRoom) is null ? Length.FromMm(1000m) : call.NeedSize(NoseRoom, orZero: true),
            out TaperedDrift? drift,
            out string? refusal
        )
            ? drift
            : throw RefusedException.WrongData(refusal);
    }

    private static EyeTolerance Tolerance(EyeDescribed eye) =>
        eye is { LeastLength: { } ll, GreatestLength: { } gl, LeastWidth: { } lw, GreatestWidth: { } gw }
            ? EyeTolerance.TryMake(ll, gl, lw, gw, out EyeTolerance? tolerance, out string? refusal)
                ? tolerance
                : throw RefusedException.WrongData(refusal)
            : throw RefusedException.WrongData(
                $"eye {eye.Name}: its least and greatest length and width are not all entered"
            );
}
