using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear;

namespace ToolWear.Results;

/// <summary>Where a drift is driven to: a new mark where one is wanted, else the mark it has.</summary>
/// <param name="MarkMm">From the shank mark towards the nose, mm; null for other tools and where no mark is entered.</param>
/// <param name="DeeperMm">How much deeper than its present mark; null where it stays there.</param>
/// <param name="NoDepth">Why no depth serves; null where one does.</param>
internal sealed record DriveMark(Cell MarkMm, Cell DeeperMm, string? NoDepth)
{
    /// <summary>The mark of a tool.</summary>
    /// <param name="all">The shop with its forecasts.</param>
    /// <param name="tool">The tool.</param>
    /// <param name="units">The unit for people.</param>
    /// <returns>The mark; all unknown for a tool that is no drift.</returns>
    public static DriveMark Of(ShopForecasts all, ToolForecast tool, LengthUnit units)
    {
        if (DriftOutlooks.Of(all, tool) is not { } outlook)
        {
            return new(Cell.Unknown, Cell.Unknown, null);
        }

        string Size(double mm) => SizeShown.Eye(Length.FromMm(Math.Abs(mm)), units);
        return outlook.Drive switch
        {
            DriveTo to => new(
                Cell.Of(
                    to.Mark.Mm,
                    _ => Words.DeeperMark(SizeShown.Eye(to.MarkFor(units), units), Size(to.DeeperMm), to.DeeperMm)
                ),
                Cell.Of(to.DeeperMm, Size),
                null
            ),
            NoDepth none => new(Cell.Unknown, Cell.Unknown, none.Why(units)),
            _ => new(Cell.Of(ToolNow.MarkOf(tool.Tool.Tool)?.Mm, Size), Cell.Unknown, null),
        };
    }
}
