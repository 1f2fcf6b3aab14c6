using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Eyes;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Results.Eyes;
using ToolWear.Wording;

namespace ToolWear.Commands.Figures;

/// <summary>eye: what eye a drift makes, or what drift an eye takes.</summary>
internal static class EyeVerb
{
    private static readonly Argument<ToolMark?> Tool = Said.MaybeTool("a drift, for the eye it makes now");
    private static readonly Option<double?> DriftMm = Said.Number("--drift-mm", "D", "the cold drift in mm", Range);
    private static readonly Option<double?> EyeMm = Said.Number(
        "--eye-mm",
        "E",
        "the cold eye in mm, the other way",
        Range
    );
    private static readonly Option<double?> EyeC = Said.Number(
        "--eye-c",
        "T",
        "how hot the eye is when the drift lets go, C"
    );
    private static readonly Option<double?> DriftC = Said.Number("--drift-c", "T", "how hot the drift is then, C");

    public static Verb Verb { get; } =
        new(
            "eye",
            "Works out the eye a drift makes, or the drift for an eye.",
            "eye --drift-mm 36.8 --eye-c 750 --drift-c 250",
            [Tool, DriftMm, EyeMm, EyeC, DriftC],
            Run,
            $"Give --drift-mm for the cold eye that a drift makes, --eye-mm for the drift that an eye needs, or a tool for the eye that it makes now.\n{Cautions.EyeCaution}"
        );

    private static void Run(Call call)
    {
        if (call.Get(Tool) is { } mark)
        {
            OfTool(call, call.Tool(mark));
            return;
        }

        if (call.Has(DriftMm) == call.Has(EyeMm))
        {
            throw RefusedException.WrongUsage("give one of TOOL, --drift-mm and --eye-mm");
        }

        KnockOut knockOut = new(
            Temperature(call, "The drift", DriftC, KnockOut.Finish.Drift),
            Temperature(call, "The eye", EyeC, KnockOut.Finish.Eye)
        );
        call.Print(
            call.Get(DriftMm) is { } drift
                ? ReckonedTables.Eye.Of(knockOut.EyeMm(drift))
                : ReckonedTables.Drift.Of(knockOut.DriftMm(call.Need(EyeMm))),
            after: $"{Cautions.EyeCaution}\n"
        );
    }

    private static void OfTool(Call call, ToolInShop tool)
    {
        ShopForecasts forecasts = call.Forecasts;
        DriftOutlook drift =
            DriftOutlooks.Of(forecasts, forecasts.Of(tool.Id))
            ?? throw RefusedException.WrongData(DriveDepthVerb.NoEyeOf(tool.Mark));
        call.Print(
            EyeFigures.Short.Of(drift, call.Units),
            after: $"{EyeText.From(drift, call.Units)}\n{Cautions.EyeCaution}\n"
        );
    }

    private static SteelTemperature Temperature(
        Call call,
        string what,
        Option<double?> option,
        SteelTemperature usual
    ) =>
        call.Get(option) is not { } celsius ? usual
        : SteelTemperature.TryMake(what, celsius, out SteelTemperature temperature, out string? refusal) ? temperature
        : throw RefusedException.WrongUsage(refusal);

    private static string? Range(double mm) => FigureRange.Refuse("It", mm, 0.1, 1000, " mm");
}
