using ToolWear.Core.Tools;

namespace ToolWear.Core.Planning;

/// <summary>Tools of one place that are forged together.</summary>
/// <param name="Tools">The place.</param>
/// <param name="Number">How many, above zero.</param>
/// <param name="ForgeBy">The day by which to forge them.</param>
/// <param name="ReadyBy">The session day before which the first of them must be ready.</param>
/// <param name="IsLate">Whether the day to forge lies before the plan begins.</param>
/// <param name="Why">Which tools run out, on which order, in a sentence.</param>
/// <param name="Series">What they are made like; null where no series was entered.</param>
/// <param name="Sure">The certainty with them, up to the day of the next batch or the end of the orders.</param>
/// <param name="SureWithOneFewer">The same with one fewer.</param>
/// <param name="Stock">Which bars they are cut from, and what to buy.</param>
/// <param name="Cost">What one of them costs to make.</param>
public sealed record ForgeBatch(
    ToolPlace Tools,
    int Number,
    DateOnly ForgeBy,
    DateOnly ReadyBy,
    bool IsLate,
    string Why,
    Series? Series,
    double Sure,
    double SureWithOneFewer,
    BatchStock Stock,
    PlaceCost Cost
)
{
    /// <summary>Hours for the whole batch; null where no tool of the sort has its hours noted.</summary>
    public decimal? Hours => Cost.Hours * Number;

    /// <summary>The cost of the whole batch; null where nothing of it is known.</summary>
    public decimal? TotalCost => Cost.Total * Number;
}
