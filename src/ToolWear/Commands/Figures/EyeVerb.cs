using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Results;

namespace ToolWear.Commands.Figures;

/// <summary>eye: what eye a drift makes, or what drift an eye takes.</summary>
internal static class EyeVerb
{
    private static readonly Argument<string> Tool = FigureOptions.Maybe("TOOL", "a drift, for the eye it makes now");
    private static readonly Option<string?> DriftMm = Common.Text("--drift-mm", "D", "the cold drift in mm");
    private static readonly Option<string?> EyeMm = Common.Text("--eye-mm", "E", "the cold eye in mm, the other way");
    private static readonly Option<string?> EyeC = Common.Text(
        "--eye-c",
        "T",
        "how hot the eye is when the drift lets go, C"
    );
    private static readonly Option<string?> DriftC = Common.Text("--drift-c", "T", "how hot the drift is then, C");

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "eye",
            "Works out the cold eye that a drift makes (--drift-mm), the drift that an eye takes (--eye-mm), or the eye\n"
                + $"that a tool makes now. {Words.EyeCaution}",
            "eye --drift-mm 36.8 --eye-c 750 --drift-c 250",
            [Tool, DriftMm, EyeMm, EyeC, DriftC],
            Run
        );

    private static void Run(Call call)
    {
        if (call.Get(Tool).Length > 0)
        {
            OfTool(call);
            return;
        }

        if (call.Get(DriftMm) is null == call.Get(EyeMm) is null)
        {
            throw RefusedException.WrongUsage("one of a TOOL, --drift-mm and --eye-mm is wanted");
        }

        KnockOut knockOut = new(
            Temperature(call, "The drift", DriftC, KnockOut.Finish.Drift),
            Temperature(call, "The eye", EyeC, KnockOut.Finish.Eye)
        );
        bool toEye = call.Get(DriftMm) is not null;
        Option<string?> given = toEye ? DriftMm : EyeMm;
        double size = call.Need(given);
        if (Core.Sections.FigureRange.Refuse(given.Name, size, 0.1, 1000, " mm") is { } refusal)
        {
            throw RefusedException.WrongUsage(refusal);
        }

        call.Print(
            new Calculated([
                toEye
                    ? new("eye_mm", "Eye, mm", Cell.Of(knockOut.EyeMm(size), FigureOptions.Decimals(1)))
                    : new("drift_mm", "Drift, mm", Cell.Of(knockOut.DriftMm(size), FigureOptions.Decimals(2))),
            ]),
            $"{Words.EyeCaution}\n"
        );
    }

    private static void OfTool(Call call)
    {
        using Bench bench = call.ToRead();
        ToolInShop tool = Call.Find(bench.Shop, Call.ReadMark(call.Get(Tool)));
        ShopForecasts forecasts = ShopForecasts.Of(bench.Shop);
        DriftOutlook drift =
            DriftOutlooks.Of(forecasts, forecasts.Of(tool.Id))
            ?? throw RefusedException.WrongData(Words.NoEyeOf(tool.Mark));
        LengthUnit units = call.Units(bench.Shop);
        Calculated all = EyeFigures.Of(drift, units);
        string[] shown =
        [
            "eye_length_mm",
            "eye_width_mm",
            "predicted_length_mm",
            "predicted_width_mm",
            "found_on_heads",
            "eye_judged",
        ];
        call.Print(
            new Calculated([.. all.All.Where(figure => shown.Contains(figure.Name, StringComparer.Ordinal))]),
            $"{Words.EyeFrom(drift.Eye.LengthInWords(units), drift.Eye.WidthInWords(units))}\n{Words.EyeCaution}\n"
        );
    }

    private static SteelTemperature Temperature(Call call, string what, Option<string?> option, SteelTemperature usual)
    {
        if (call.Get(option) is null)
        {
            return usual;
        }

        return SteelTemperature.TryMake(what, call.Need(option), out SteelTemperature temperature, out string? refusal)
            ? temperature
            : throw RefusedException.WrongUsage(refusal);
    }
}
