using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Results;

namespace ToolWear;

/// <content>What the forge list's screen says of a batch.</content>
public static partial class Words
{
    internal static string BatchHeading(ForgeBatch batch, LengthUnit units)
    {
        string Size(Length? size) => size is { } known ? SizeShown.Eye(known, units) : "-";
        string sizes = batch.Series is { } series ? $", {Size(series.Length)} x {Size(series.Width)}" : "";
        return $"{batch.ForgeBy:yyyy-MM-dd}  {batch.Number} {batch.Tools}{sizes}, {batch.Series?.Steel ?? "steel as you choose"}";
    }

    internal static string BatchDetails(ForgeBatch batch)
    {
        string cuts = ForgeTable.Cuts(batch.Stock);
        string buy = ForgeTable.Buy(batch.Stock) is { } bars ? $"Buy {bars}. " : "";
        string cost = batch.TotalCost is { } total ? $"Cost about {total:0}. " : "";
        return BatchWhy(batch)
            + "\n"
            + (cuts.Length > 0 ? $"From {cuts}. " : "")
            + buy
            + cost
            + $"Certainty {Percent(batch.Sure)}, with one fewer {Percent(batch.SureWithOneFewer)}."
            + StockNotes(batch);
    }
}
