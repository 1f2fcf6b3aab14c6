using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.OneTool;

namespace ToolWear.Results.Tools;

/// <summary>Where a drift is driven to: a new mark where one is needed, else the mark it has.</summary>
internal static class DriveMark
{
    /// <summary>From the shank mark towards the nose; not known for other tools and where no mark is entered.</summary>
    public static Cell MarkMm(Tool tool, DriveDepth? drive, LengthUnit units) =>
        drive switch
        {
            DriveTo to => Cell.Of(
                to.Mark.Mm,
                _ =>
                    $"{SizeShown.Eye(to.MarkFor(units), units)} ({Quantity.Gap.Show(to.DeeperMm, units)} {(to.DeeperMm < 0 ? "less" : "deeper")})"
            ),
            NoDepth => Cell.Unknown,
            _ => Cell.Of(ToolNow.MarkOf(tool)?.Mm, mm => Quantity.Size.Show(mm, units)),
        };
}
