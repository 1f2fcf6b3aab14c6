using System.Collections.Immutable;
using System.Runtime.InteropServices;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Planning;

/// <summary>The section and size that a bar comes in.</summary>
/// <param name="Section">The shape of its section.</param>
/// <param name="A">The diameter, or the long way.</param>
/// <param name="B">The short way; null where it is round.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct BarSize(SectionKind Section, Length A, Length? B);

/// <summary>A bar in the rack, or one that has to be bought.</summary>
/// <param name="Name">Its name; null for one that has to be bought.</param>
/// <param name="Steel">Its steel.</param>
/// <param name="Size">Its section and size.</param>
public sealed record BarWanted(string? Name, string Steel, BarSize Size);

/// <summary>What names a batch: what is forged, and by when.</summary>
/// <param name="Tools">The place.</param>
/// <param name="ForgeBy">The day by which to forge.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct BatchName(ToolPlace Tools, DateOnly ForgeBy);

/// <summary>Pieces cut from one bar.</summary>
/// <param name="Bar">The bar.</param>
/// <param name="Pieces">How many pieces, above zero.</param>
/// <param name="PieceMm">The length of each in mm.</param>
/// <param name="PieceKg">What each weighs as cut, kg.</param>
/// <param name="LeftMm">What is left of the bar after this batch and those before it, mm.</param>
public sealed record BarCut(BarWanted Bar, int Pieces, double PieceMm, double PieceKg, double LeftMm);

/// <summary>Bars to be bought.</summary>
/// <param name="Bar">Their steel and size.</param>
/// <param name="Bars">How many whole bars, above zero.</param>
/// <param name="BarMm">How long each comes, mm.</param>
/// <param name="Pieces">How many pieces are to be cut from them.</param>
/// <param name="PieceMm">The length of each piece in mm.</param>
/// <param name="PieceKg">What each weighs as cut, kg.</param>
public sealed record BarsToBuy(BarWanted Bar, int Bars, double BarMm, int Pieces, double PieceMm, double PieceKg);

/// <summary>Pieces of one batch on one bar.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Pieces">How many pieces, above zero.</param>
/// <param name="PieceMm">The length of each in mm.</param>
public sealed record BatchOnBar(BatchName Batch, int Pieces, double PieceMm);

/// <summary>What all batches together take of one bar.</summary>
/// <param name="Bar">The bar.</param>
/// <param name="LengthMm">How long it is before, mm.</param>
/// <param name="Batches">What is cut, in the order of the days.</param>
/// <param name="CutMm">What each cut takes, one for each piece, mm.</param>
/// <param name="LeftMm">What is left over, mm: pieces, cuts and this together are the bar.</param>
public sealed record BarUse(
    BarWanted Bar,
    double LengthMm,
    ImmutableArray<BatchOnBar> Batches,
    double CutMm,
    double LeftMm
);

/// <summary>A bar that two batches or more want.</summary>
/// <param name="Bar">The bar.</param>
/// <param name="Batches">The batches, in the order of the days.</param>
/// <param name="IsTooShort">Whether it is too short for all of them.</param>
public sealed record SharedBar(BarWanted Bar, ImmutableArray<BatchName> Batches, bool IsTooShort);

/// <summary>What is cut from each bar for all batches, and what has to be bought.</summary>
/// <param name="Bars">The bars that are cut, those in the rack first.</param>
/// <param name="Buy">What to buy, in whole bars, the batches that want the same taken together.</param>
/// <param name="Shared">The bars of the rack that two batches want.</param>
public sealed record CutList(
    ImmutableArray<BarUse> Bars,
    ImmutableArray<BarsToBuy> Buy,
    ImmutableArray<SharedBar> Shared
);

/// <summary>What a batch is cut from.</summary>
/// <param name="PieceKg">What one piece weighs as cut, kg, the mean where bars differ; null where no body is known.</param>
/// <param name="PriceAKg">What a kg of its steel costs; null where no bar's price is noted.</param>
/// <param name="Cuts">The cuts from bars in the rack, and from those that a batch before it buys.</param>
/// <param name="Buy">What has to be bought for it; null where nothing has.</param>
/// <param name="Notes">What there is to say: upsetting, why nothing is known.</param>
public sealed record BatchStock(
    double? PieceKg,
    decimal? PriceAKg,
    ImmutableArray<BarCut> Cuts,
    BarsToBuy? Buy,
    ImmutableArray<string> Notes
)
{
    /// <summary>Nothing can be said of the stock.</summary>
    /// <param name="why">Why.</param>
    /// <returns>The stock.</returns>
    public static BatchStock Unknown(string why) => new(null, null, [], null, [why]);

    /// <summary>What the steel of one piece costs; null where weight or price is not known.</summary>
    public decimal? PieceCost => PieceKg is { } kg && PriceAKg is { } price ? (decimal)kg * price : null;

    /// <summary>What the pieces of a place are cut from.</summary>
    /// <param name="found">Its body; null where none is known.</param>
    /// <param name="steel">Its steel; null where not known.</param>
    /// <param name="cut">Cuts it from the rack.</param>
    /// <returns>The stock, with a word where its body is estimated.</returns>
    internal static BatchStock Of(PlaceBody? found, string? steel, Func<Sections.Body, string, BatchStock> cut)
    {
        if (found is null)
        {
            return Unknown("no tool of this sort has its body on record, so the cut length is not known");
        }

        string? made = steel ?? (found.Own ?? found.Like)?.Tool.Steel;
        if (made is null)
        {
            return Unknown("its steel is not known");
        }

        BatchStock stock = cut(found.Body, made);
        return found.Estimated is { } how ? stock with { Notes = stock.Notes.Add(how) } : stock;
    }
}
