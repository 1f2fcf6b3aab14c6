using System.Collections.Immutable;
using ToolWear.Core.Tools;

namespace ToolWear;

/// <content>Cautions that depend on what is in use, and those that belong together. Common practice, no source.</content>
public static partial class Words
{
    /// <summary>The caution about water and the first blow, where nobody knows yet which steels will be in use.</summary>
    internal const string AnySteelCaution = $"{NoWater} {WaterWhenBlack} {WarmFirst}";

    /// <summary>What stands where a tool is added, one a line.</summary>
    internal static string AddingCautions { get; } = $"{StruckEndCaution}\n{OneLine(HammerCaution)}";

    private const string NoWater = "No water on air-hardening steel that has shown red.";
    private const string WaterWhenBlack = "Carbon tools into water only when black.";
    private const string WarmFirst = "Warm cold air-hardening tools before the first blow.";

    /// <summary>What stands where a tool is dressed or restored, one a line.</summary>
    internal static string RestoringCautions { get; } =
        $"{StruckEndCaution}\n{OneLine(OverheatedCaution)}\n{GrindingCaution}";

    /// <summary>What the steels in use ask of water and of the first blow.</summary>
    /// <param name="tools">The tools in use.</param>
    /// <returns>Sentences; empty where no tool is in use.</returns>
    internal static string SteelCaution(ImmutableArray<Tool> tools)
    {
        bool mayBeHard = tools.Any(tool => tool.Steel is null || IsAirHardening(tool.Steel));
        bool mayBeOther = tools.Any(tool => tool.Steel is null || !IsAirHardening(tool.Steel));
        string[] said =
        [
            .. mayBeHard ? [NoWater] : Array.Empty<string>(),
            .. mayBeOther ? [WaterWhenBlack] : Array.Empty<string>(),
            .. mayBeHard ? [WarmFirst] : Array.Empty<string>(),
        ];
        return string.Join(' ', said);
    }
}
