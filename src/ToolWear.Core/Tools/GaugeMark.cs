using ToolWear.Core.Measure;

namespace ToolWear.Core.Tools;

/// <summary>Which way a size goes as the tool wears.</summary>
public enum Wears
{
    /// <summary>The size falls: a drift's width.</summary>
    Smaller,

    /// <summary>The size grows: the flat on a fuller's nose.</summary>
    Larger,
}

/// <summary>What a gauge mark measures.</summary>
public enum Measures
{
    /// <summary>The long way of the section, along the eye.</summary>
    Length,

    /// <summary>The thickness, across the eye.</summary>
    Width,

    /// <summary>The radius of a teardrop's nose.</summary>
    NoseRadius,

    /// <summary>A working edge.</summary>
    Edge,

    /// <summary>The flat that a round nose wears to.</summary>
    Flat,

    /// <summary>The whole length of the tool, struck end to nose.</summary>
    Overall,

    /// <summary>Something else.</summary>
    Other,
}

/// <summary>A marked place on a tool where it is always measured, in a named direction.</summary>
/// <param name="Name">Its name, unique on the tool: "width".</param>
/// <param name="Wears">The main direction of wear.</param>
/// <param name="Measures">What is measured there, null where nobody said.</param>
/// <param name="FromMark">How far from the shank mark, null where not known.</param>
/// <param name="Start">The starting size, null where not known (a tool in use).</param>
/// <param name="Least">The least usable size, null where there is none.</param>
/// <param name="Greatest">The greatest usable size, null where there is none.</param>
/// <param name="Resolution">What the caliper reads to there, null for the shop's usual.</param>
public sealed record GaugeMark(
    string Name,
    Wears Wears,
    Measures? Measures,
    Length? FromMark,
    Length? Start,
    Length? Least,
    Length? Greatest,
    Length? Resolution
)
{
    /// <summary>The words of <see cref="Tools.Wears"/>.</summary>
    public static Vocabulary<Wears> WearsWords { get; } =
        new("wears", (Wears.Smaller, "smaller"), (Wears.Larger, "larger"));

    /// <summary>The words of <see cref="Tools.Measures"/>.</summary>
    public static Vocabulary<Measures> MeasuresWords { get; } =
        new(
            "measures",
            (Tools.Measures.Length, "length"),
            (Tools.Measures.Width, "width"),
            (Tools.Measures.NoseRadius, "nose-radius"),
            (Tools.Measures.Edge, "edge"),
            (Tools.Measures.Flat, "flat"),
            (Tools.Measures.Overall, "overall"),
            (Tools.Measures.Other, "other")
        );

    /// <summary>The size at which the tool is done in the main direction of wear; null where none was set.</summary>
    public Length? ScrapSize => Wears == Wears.Smaller ? Least : Greatest;

    /// <summary>The wear from a starting size to a size, above zero in the main direction, below zero the other way.</summary>
    /// <param name="start">The starting size.</param>
    /// <param name="size">The size now.</param>
    /// <returns>Start less size where wear makes it smaller, else size less start.</returns>
    public Length WearTo(Length start, Length size) => Wears == Wears.Smaller ? start - size : size - start;

    /// <summary>The wear that may go from a starting size, <c>limit = |start - scrap size|</c>.</summary>
    /// <param name="start">The starting size.</param>
    /// <returns>The limit above zero, or null where no scrap size is set or it is already reached.</returns>
    public Length? LimitFrom(Length start) =>
        ScrapSize is { } scrap && WearTo(start, scrap) is var limit && limit > Length.Zero ? limit : null;

    /// <summary>Whether the limit is more than a quarter of a starting size, so that it is rather a slip.</summary>
    /// <param name="start">The starting size.</param>
    /// <returns>True where it is; false where no scrap size is set.</returns>
    public bool IsLimitDoubtful(Length start) =>
        LimitFrom(start) is { } limit && limit.Nanometres > start.Nanometres / 4;

    /// <summary>Why this gauge mark cannot be.</summary>
    /// <returns>A sentence, or null where it can.</returns>
    public string? Refusal()
    {
        if (ToolMark.Fault("gauge mark", Name) is { } fault)
        {
            return fault;
        }

        Length?[] sizes = [Start, Least, Greatest, Resolution];
        if (sizes.Any(size => size <= Length.Zero || size > SizeText.Longest) || FromMark < Length.Zero)
        {
            return $"gauge mark {Name}: a size is above zero and at most 10 m";
        }

        if (Least >= Greatest)
        {
            return $"gauge mark {Name}: the least usable size {Least} must lie under the greatest {Greatest}";
        }

        return Start is not { } start || ScrapSize is not { } scrap || LimitFrom(start) is not null
            ? null
            : $"gauge mark {Name} wears {WearsWords.Word(Wears)}, so its scrap size {scrap} must lie "
                + (Wears == Wears.Smaller ? "under" : "over")
                + $" the starting size {start}";
    }
}
