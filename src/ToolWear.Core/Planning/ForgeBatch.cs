using System.Collections.Immutable;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Planning;

/// <summary>Tools of one place that are forged together.</summary>
/// <param name="Tools">The place.</param>
/// <param name="Needed">How many, before which session, for which order.</param>
/// <param name="ForgeBy">The day by which to forge them, never before the plan begins.</param>
/// <param name="SureUntil">The certainty of what is on hand up to the day before they are ready.</param>
/// <param name="InService">The tools there now, with a word where nothing can be counted on.</param>
/// <param name="Failures">How many such tools cracked or broke on record; where none did, wear alone is reckoned with.</param>
/// <param name="Series">What they are made like; null where no series was entered.</param>
/// <param name="Sure">The certainty with them, up to the day of the next batch or the end of the orders.</param>
/// <param name="SureWithOneFewer">The same with one fewer.</param>
/// <param name="Stock">Which bars they are cut from, and what to buy.</param>
/// <param name="Cost">What one of them costs to make.</param>
public sealed record ForgeBatch(
    ToolPlace Tools,
    TimedBatch Needed,
    DateOnly ForgeBy,
    double SureUntil,
    ImmutableArray<CountedTool> InService,
    int Failures,
    Series? Series,
    double Sure,
    double SureWithOneFewer,
    BatchStock Stock,
    PlaceCost Cost
)
{
    /// <summary>How many, above zero.</summary>
    public int Number => Needed.Number;

    /// <summary>The day on which the first of them must be ready, and can be.</summary>
    public DateOnly ReadyBy => Needed.ReadyBy;

    /// <summary>Whether they are needed before they can be ready: until then the tools on hand have to do.</summary>
    public bool IsLate => Needed.WantedOn < ReadyBy;

    /// <summary>Hours for the whole batch; null where no tool of the sort has its hours noted.</summary>
    public decimal? Hours => Cost.Hours * Number;

    /// <summary>The cost of the whole batch; null where nothing of it is known.</summary>
    public decimal? TotalCost => Cost.Total * Number;

    // a shop may have dozens of one sort
    private const int MostNamed = 6;

    /// <summary>Which tools run out, on which order, without a full stop.</summary>
    public string Why
    {
        get
        {
            string[] marks =
            [
                .. InService.Where(tool => tool.WhyNot is null).Select(tool => tool.Forecast.Tool.Mark.Text),
            ];
            string[] tools =
            [
                .. marks.Length == 0 ? Array.Empty<string>() : [string.Join(", ", marks.Take(MostNamed))],
                .. marks.Length > MostNamed ? [$"{marks.Length - MostNamed} more"] : Array.Empty<string>(),
                .. Needed.Before == 0 ? Array.Empty<string>() : [$"{Needed.Before} new"],
            ];
            string run =
                tools.Length == 0
                    ? "no tool that counts is in service there"
                    : $"{string.Join(" and ", tools)} may run out{(Failures > 0 ? $" or crack ({Failures} of the sort on record)" : "")}";
            string not = string.Concat(
                InService
                    .Where(tool => tool.WhyNot is not null)
                    .Select(tool => $"; {tool.Forecast.Tool.Mark} is not counted on: {tool.WhyNot}")
            );
            return $"{run} on order {Needed.Order}, session of {Needed.WantedOn:yyyy-MM-dd}{not}";
        }
    }
}
