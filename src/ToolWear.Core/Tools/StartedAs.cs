using ToolWear.Core.Measure;

namespace ToolWear.Core.Tools;

/// <summary>How a tool came into the records.</summary>
public enum StartedAs
{
    /// <summary>Fresh from the fire, every heat in the records.</summary>
    New,

    /// <summary>Already used when it was entered.</summary>
    InUse,
}

/// <summary>How well the heats before the records are known.</summary>
public enum HeatsBeforeHow
{
    /// <summary>They were counted.</summary>
    Counted,

    /// <summary>They were estimated.</summary>
    Estimated,

    /// <summary>Nobody knows.</summary>
    Unknown,
}

/// <summary>What a tool had behind it when it was entered.</summary>
/// <param name="As">New, or already in use.</param>
/// <param name="HeatsBefore">Weighted heats before the records, null where unknown or new.</param>
/// <param name="How">How those are known; null for a new tool.</param>
public sealed record ToolStart(StartedAs As, Heats? HeatsBefore, HeatsBeforeHow? How)
{
    /// <summary>Fresh from the fire.</summary>
    public static ToolStart New { get; } = new(StartedAs.New, null, null);

    /// <summary>In use, and nobody knows for how long.</summary>
    public static ToolStart Unknown { get; } = new(StartedAs.InUse, null, HeatsBeforeHow.Unknown);

    /// <summary>The words of <see cref="StartedAs"/>.</summary>
    public static Vocabulary<StartedAs> AsWords { get; } =
        new("started_as", (StartedAs.New, "new"), (StartedAs.InUse, "in use"));

    /// <summary>The words of <see cref="HeatsBeforeHow"/>.</summary>
    public static Vocabulary<HeatsBeforeHow> HowWords { get; } =
        new(
            "heats_before_how",
            (HeatsBeforeHow.Counted, "counted"),
            (HeatsBeforeHow.Estimated, "estimated"),
            (HeatsBeforeHow.Unknown, "unknown")
        );

    /// <summary>Whether the records begin with a tool whose heats nobody knows.</summary>
    public bool IsUnknown => As == StartedAs.InUse && HeatsBefore is null;

    /// <summary>Why this start cannot be.</summary>
    /// <returns>A sentence, or null where it can.</returns>
    public string? Refusal() =>
        As == StartedAs.New && (HeatsBefore is not null || How is not null)
            ? "a new tool has no heats before: leave heats_before empty, or let it start as in use"
        : As == StartedAs.InUse && HeatsBefore is null != (How is null or HeatsBeforeHow.Unknown)
            ? "heats_before and heats_before_how go together: a number with counted or estimated, or none with unknown"
        : null;
}
