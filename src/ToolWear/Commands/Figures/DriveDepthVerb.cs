using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Results;

namespace ToolWear.Commands.Figures;

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
        DriveDepth depth = DriveDepths.ChooseNotLess(
            Drift(call, shop, tool.Tool),
            EyeOf(shop, tool),
            Tolerance(shop, tool)
        );
        LengthUnit units = call.Units(shop);
        if (depth is NoDepth none)
        {
            throw RefusedException.WrongData($"{tool.Mark} is at its end. {none.Why(units)}");
        }

        DriveTo to = (DriveTo)depth;
        string Shown(double mm) => SizeShown.Eye(Length.FromMm(mm), units);
        call.Print(
            new Calculated([
                new("shift_mm", "Deeper by", Cell.Of(to.DeeperMm, FigureOptions.Decimals(1))),
                new(
                    "mark_mm",
                    "New mark, from the shank mark",
                    Cell.Of(to.Mark.Mm, _ => SizeShown.Eye(to.MarkFor(units), units))
                ),
                new("eye_length_mm", "Eye length there", Cell.Of(to.Eye.LengthMm, Shown)),
                new("eye_width_mm", "Eye width there", Cell.Of(to.Eye.WidthMm, Shown)),
            ]),
            $"{Words.EyeCaution}\n"
        );
    }

    private static EyeSize EyeOf(Shop shop, ToolInShop tool)
    {
        ShopForecasts forecasts = ShopForecasts.Of(shop);
        return EyeNow.Of(forecasts, forecasts.Of(tool.Id))?.Eye
            ?? throw RefusedException.WrongData(Words.NoEyeOf(tool.Mark));
    }

    private static EyeDescribed Described(Shop shop, ToolInShop tool) =>
        (tool.Tool.Eye is { } name ? shop.Eyes.GetValueOrDefault(name) : null)
        ?? throw RefusedException.WrongData($"{tool.Mark}: its eye is not entered");

    private static TaperedDrift Drift(Call call, Shop shop, Tool tool) =>
        DriftOutlooks.TaperedOf(
            shop,
            tool,
            tool.Eye is { } eye ? shop.Eyes.GetValueOrDefault(eye) : null,
            shop.Settings.NoseRoom
        )
            is { } drift
            ? call.Get(NoseRoom) is null
                ? drift
                : drift.WithNoseRoom(call.NeedSize(NoseRoom, orZero: true))
            : throw RefusedException.WrongData(Words.NoMarkOf(tool.Mark));

    private static EyeTolerance Tolerance(Shop shop, ToolInShop tool)
    {
        EyeDescribed eye = Described(shop, tool);
        return !DriftOutlooks.IsJudged(tool.Tool.Place)
            ? throw RefusedException.WrongData(Words.EyeNotFinished(tool.Mark))
            : DriftOutlooks.WantedOf(shop, eye).Judged
                ?? throw RefusedException.WrongData(
                    $"eye {eye.Name}: its least and greatest length and width are not all entered"
                );
    }
}
