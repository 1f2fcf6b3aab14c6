using System.Collections.Immutable;

namespace ToolWear.Core.Planning;

/// <summary>Pieces cut from one bar.</summary>
/// <param name="Bar">The bar's name.</param>
/// <param name="Pieces">How many pieces, above zero.</param>
/// <param name="PieceMm">The length of each in mm.</param>
/// <param name="LeftMm">What is left of the bar after this batch and those before it, mm.</param>
public sealed record BarCut(string Bar, int Pieces, double PieceMm, double LeftMm);

/// <summary>Bars to be bought.</summary>
/// <param name="What">The steel and the size: "4140 round 38".</param>
/// <param name="Bars">How many whole bars, above zero.</param>
/// <param name="BarMm">How long each comes, mm.</param>
/// <param name="Pieces">How many pieces are to be cut from them.</param>
/// <param name="PieceMm">The length of each piece in mm.</param>
public sealed record BarsToBuy(string What, int Bars, double BarMm, int Pieces, double PieceMm);

/// <summary>Pieces of one batch on one bar.</summary>
/// <param name="Batch">The batch: its place and the day to forge it.</param>
/// <param name="Pieces">How many pieces, above zero.</param>
/// <param name="PieceMm">The length of each in mm.</param>
public sealed record BatchOnBar(string Batch, int Pieces, double PieceMm);

/// <summary>What all batches together take of one bar.</summary>
/// <param name="Bar">The bar's name; of one that is to be bought, "new" and what it is.</param>
/// <param name="What">The steel and the size: "4140 round 38".</param>
/// <param name="IsBought">Whether it has to be bought first.</param>
/// <param name="LengthMm">How long it is before, mm.</param>
/// <param name="Batches">What is cut, in the order of the days.</param>
/// <param name="LeftMm">What is left over, mm.</param>
public sealed record BarUse(
    string Bar,
    string What,
    bool IsBought,
    double LengthMm,
    ImmutableArray<BatchOnBar> Batches,
    double LeftMm
);

/// <summary>What is cut from each bar for all batches, and what has to be bought.</summary>
/// <param name="Bars">The bars that are cut, those in the rack first.</param>
/// <param name="Buy">What to buy, in whole bars, the batches that want the same taken together.</param>
/// <param name="Shared">Sentences on bars that two batches want, without a full stop.</param>
public sealed record CutList(ImmutableArray<BarUse> Bars, ImmutableArray<BarsToBuy> Buy, ImmutableArray<string> Shared);

/// <summary>What a batch is cut from.</summary>
/// <param name="PieceKg">What one piece weighs as cut, kg; null where no body is known.</param>
/// <param name="Cuts">The cuts from bars in the rack, and from those that a batch before it buys.</param>
/// <param name="Buy">What has to be bought for it; null where nothing has.</param>
/// <param name="Notes">What there is to say: a shared bar, upsetting, why nothing is known.</param>
public sealed record BatchStock(
    double? PieceKg,
    ImmutableArray<BarCut> Cuts,
    BarsToBuy? Buy,
    ImmutableArray<string> Notes
)
{
    /// <summary>Nothing can be said of the stock.</summary>
    /// <param name="why">Why.</param>
    /// <returns>The stock.</returns>
    public static BatchStock Unknown(string why) => new(null, [], null, [why]);
}
