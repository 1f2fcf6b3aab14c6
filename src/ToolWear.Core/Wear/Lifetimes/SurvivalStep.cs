using System.Runtime.InteropServices;

namespace ToolWear.Core.Wear.Lifetimes;

/// <summary>One step of a survival curve, at heats at which a tool failed.</summary>
/// <param name="Heats">The heats.</param>
/// <param name="AtRisk">Tools that were watched just before.</param>
/// <param name="Failed">Tools that failed then, at least one.</param>
/// <param name="Surviving">The share that outlives these heats, 0 to 1.</param>
/// <param name="Se">Greenwood's standard error of the share; null where nothing survives.</param>
/// <param name="Low95">Lower log-log limit of the share; null where nothing survives.</param>
/// <param name="High95">Upper log-log limit; null where nothing survives.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct SurvivalStep(
    double Heats,
    int AtRisk,
    int Failed,
    double Surviving,
    double? Se,
    double? Low95,
    double? High95
);
