using System.Collections.Immutable;
using ToolWear.Core.Tools;

namespace ToolWear.Wording;

/// <summary>What is said at the moment of risk: tests/ToolWear.Tests/Cautions/PLACES.md lists where each stands.</summary>
internal static class Cautions
{
    public const string ForecastCautionShort =
        "Heats left is an estimate, not a go-ahead; any heat can crack it. Look it over.";

    /// <summary>What is said once, at the first start and on the shop page. Common practice, no source.</summary>
    public const string ShopCaution =
        "Carbon monoxide, noise, hot metal underfoot; nobody works alone. ToolWear counts heats and sizes; it sees no crack.";

    /// <summary>The caution about water and the first blow, where nobody knows yet which steels will be in use.</summary>
    public const string AnySteelCaution = $"{NoWater} {WaterWhenBlack} {WarmFirst}";
    private const string NoWater = "No water on air-hardening steel that has shown red.";
    private const string WaterWhenBlack = "Carbon tools into water only when black.";
    private const string WarmFirst = "Warm cold air-hardening tools before the first blow.";
    public const string EyeCautionShort =
        "Too tight an eye splits the handle, too loose throws the head: check each fit.";
    public const string UnknownSteel = "unknown";

    /// <summary>What stands where a tool is to be made into another. Common practice, no source.</summary>
    public const string MakeIntoCaution =
        "By shape alone: not after a crack or an over-heat, nor in unknown steel without trial.";

    /// <summary>What stands beside every forecast. Common practice, no source.</summary>
    public const string ForecastCaution =
        "Heats left is an estimate, not a go-ahead: a drift can crack on any heat. A competent person looks each tool over and decides; local codes and the employer's rules come first. No inspection record for the authorities.";

    /// <summary>What stands where an eye size is shown. Common practice, no source.</summary>
    public const string EyeCaution =
        "Too tight an eye splits the handle, too loose throws the head: check every head's handle fit by hand.";

    /// <summary>What stands where a finding is entered. 29 CFR 1926.301(c), 29 CFR 1910.242(a).</summary>
    public const string FindingCaution =
        "No mushroomed, chipped, cracked or loose-handled tool in use (29 CFR 1926.301(c), 1910.242(a)).";

    /// <summary>What stands where a tool is added or reworked. Common practice, no source.</summary>
    public const string StruckEndCaution = "Struck end soft, chamfered, square; never a hard face on a hard face.";

    /// <summary>What stands where a tool is ground or mended. Common practice, no source.</summary>
    public const string GrindingCaution =
        "Grinding: guard, rest, eyes and lungs. No plated scrap in the fire; mind welding fume; try unknown steel first.";

    /// <summary>What follows a finding of an over-heated tool. Common practice, no source.</summary>
    public const string OverheatedCaution =
        "An over-heated air-hardening tool is brittle until tempered; a drift stuck in a head that went back to the fire counts as over-heated. Press it out; never hammer on a cracked one.";

    /// <summary>What stands where a size is read. Common practice, no source.</summary>
    public const string MeasureCaution = "Measure cold: black is not cold.";

    /// <summary>What stands where slitting and opening are begun. Common practice, no source.</summary>
    public const string BlindHoleCaution =
        "Blind holes: little lubricant, dry, lift out often; trapped grease or wet dust can throw the tool. No used engine oil.";

    /// <summary>What stands at the start of a session. Common practice, no source.</summary>
    public const string HammerCaution =
        "Hold tools by tongs or rod, beside the body, nobody in line; a tool must fit under the raised ram; power off and ram blocked before touching dies.";

    /// <summary>What stands where a tool is added, one a line.</summary>
    public static string AddingCautions { get; } = $"{StruckEndCaution}\n{HammerCaution}";

    /// <summary>What stands where a tool is dressed or restored, one a line.</summary>
    public static string RestoringCautions { get; } = $"{StruckEndCaution}\n{OverheatedCaution}\n{GrindingCaution}";

    /// <summary>What the steels in use ask of water and of the first blow.</summary>
    public static string SteelCaution(ImmutableArray<Tool> tools)
    {
        bool mayBeHard = tools.Any(tool =>
            SteelClasses.Of(tool.Steel) is SteelClass.AirHardening or SteelClass.Unknown
        );
        bool mayBeOther = tools.Any(tool => SteelClasses.Of(tool.Steel) != SteelClass.AirHardening);
        string[] said =
        [
            .. mayBeHard ? [NoWater] : Array.Empty<string>(),
            .. mayBeOther ? [WaterWhenBlack] : Array.Empty<string>(),
            .. mayBeHard ? [WarmFirst] : Array.Empty<string>(),
        ];
        return string.Join(' ', said);
    }

    public static string SteelsTonight(ImmutableArray<Tool> tools)
    {
        string[] hard =
        [
            .. tools
                .Where(tool => SteelClasses.Of(tool.Steel) == SteelClass.AirHardening)
                .Select(tool => $"{tool.Mark} ({tool.Steel})"),
        ];
        string[] unknown =
        [
            .. tools.Where(tool => SteelClasses.Of(tool.Steel) == SteelClass.Unknown).Select(tool => tool.Mark.Text),
        ];
        return (hard.Length == 0 ? "" : $"Air-hardening tonight: {string.Join(", ", hard)}. ")
            + (unknown.Length == 0 ? "" : $"Steel unknown, so no water: {string.Join(", ", unknown)}.");
    }
}
