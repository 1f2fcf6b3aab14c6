using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Doors;
using ToolWear.Results.Eyes;
using ToolWear.Wording;

namespace ToolWear.Commands.Figures;

/// <summary>drive-depth: how much deeper a worn drift is driven.</summary>
internal static class DriveDepthVerb
{
    private static readonly Argument<ToolMark?> Tool = Said.MaybeTool("a drift of the shop, for its new mark");
    private static readonly Option<double?> Worn = Said.Number("--worn-mm", "W", "the wear to make up in mm");
    private static readonly Option<double?> TaperOption = Said.Number(
        "--taper",
        "Q",
        "mm of size a mm of depth, over the whole width"
    );
    private static readonly Option<Length?> NoseRoom = Said.Size(
        "--nose-room-mm",
        "R",
        "how much deeper the nose can go, with a TOOL",
        orZero: true
    );

    public static Verb Verb { get; } =
        new(
            "drive-depth",
            "Works out how much deeper to drive a worn drift.",
            "drive-depth --worn-mm 0.3 --taper 0.03",
            [Tool, Worn, TaperOption, NoseRoom],
            Run,
            $"Give two figures, or a tool: then the tolerance of its eye is minded.\n{Cautions.EyeCaution}"
        );

    private static void Run(Call call)
    {
        if (call.Get(Tool) is { } mark)
        {
            OfTool(call, call.Tool(mark));
            return;
        }

        if (!Taper.TryShift(call.Need(Worn), call.Need(TaperOption), out double shift, out string? refusal))
        {
            throw RefusedException.WrongUsage(refusal);
        }

        call.Print(ReckonedTables.Shift.Of(shift), after: $"{Cautions.EyeCaution}\n");
    }

    private static void OfTool(Call call, ToolInShop tool)
    {
        DriveDepth depth = DriveDepths.ChooseNotLess(
            Drift(call, tool.Tool),
            EyeOf(call, tool),
            Tolerance(call.Shop, tool)
        );
        LengthUnit units = call.Units;
        if (depth is NoDepth none)
        {
            throw RefusedException.WrongData($"{tool.Mark} is at its end. {none.Why(units)}");
        }

        call.Print(ReckonedTables.Depth.Of((DriveTo)depth, units), after: $"{Cautions.EyeCaution}\n");
    }

    private static EyeSize EyeOf(Call call, ToolInShop tool)
    {
        ShopForecasts forecasts = call.Forecasts;
        return EyeNow.Of(forecasts, forecasts.Of(tool.Id))?.Eye ?? throw RefusedException.WrongData(NoEyeOf(tool.Mark));
    }

    private static EyeDescribed Described(Shop shop, ToolInShop tool) =>
        (tool.Tool.Eye is { } name ? shop.Eyes.GetValueOrDefault(name) : null)
        ?? throw RefusedException.WrongData($"{tool.Mark}: its eye is not on record");

    private static TaperedDrift Drift(Call call, Tool tool)
    {
        Shop shop = call.Shop;
        EyeDescribed? eye = tool.Eye is { } name ? shop.Eyes.GetValueOrDefault(name) : null;
        TaperedDrift drift =
            DriftOutlooks.TaperedOf(shop, tool, eye, shop.Settings.NoseRoom)
            ?? throw RefusedException.WrongData(NoMarkOf(tool.Mark));
        return call.Get(NoseRoom) is { } room ? drift.WithNoseRoom(room) : drift;
    }

    private static EyeTolerance Tolerance(Shop shop, ToolInShop tool)
    {
        EyeDescribed eye = Described(shop, tool);
        return !DriftOutlooks.IsJudged(tool.Tool.Place)
            ? throw RefusedException.WrongData(EyeNotFinished(tool.Mark))
            : DriftOutlooks.WantedOf(shop, eye).Judged
                ?? throw RefusedException.WrongData(
                    $"eye {eye.Name}: its least and greatest length and width are not all on record"
                );
    }

    private static string NoMarkOf(Core.Tools.ToolMark tool) =>
        $"{tool}: where its width is measured from the shank mark, or the station where its full-size part begins, is not entered";

    private static string EyeNotFinished(Core.Tools.ToolMark tool) =>
        $"{tool} does not make the finished eye: only a finish drift is driven to the eye's tolerance";

    internal static string NoEyeOf(Core.Tools.ToolMark tool) =>
        $"{tool}: its length and width are not both known, or it is no drift";
}
