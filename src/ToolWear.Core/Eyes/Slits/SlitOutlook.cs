using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Eyes.Slits;

/// <summary>What dressing does to a gauge mark, from the shop's own history.</summary>
/// <param name="Dressings">On how many dressings it rests, above zero.</param>
/// <param name="LossMm">The mean loss from one dressing to the next, above zero.</param>
/// <param name="HeatsADressing">Weighted heats from one dressing to the next, the mean.</param>
/// <param name="HeatsSince">Weighted heats since the last.</param>
public sealed record DressingHistory(int Dressings, double LossMm, double HeatsADressing, double HeatsSince)
{
    /// <summary>Heats until no dressing is left: those of the dressings left, and what is left of the edge as it is.</summary>
    /// <param name="spareMm">What may still be taken off, zero or more.</param>
    /// <returns>Weighted heats.</returns>
    public double Heats(double spareMm) =>
        (Math.Floor((spareMm / LossMm) + 1e-9) * HeatsADressing) + Math.Max(0, HeatsADressing - HeatsSince);
}

/// <summary>What is left in a slitter or punch.</summary>
/// <param name="EdgeMm">The length of its edge now, which is the slit it opens; null where not known.</param>
/// <param name="Slit">That slit for its eye, with its stretch; null where eye or edge is not known, or no such slit serves.</param>
/// <param name="SlitRefusal">Why no such slit serves; null where it does or nothing is known.</param>
/// <param name="NeedsMm">The least edge that the slit needs; null where not known.</param>
/// <param name="Dressings">The dressings left; null where length, loss or least safe length is not known.</param>
/// <param name="History">What dressing did so far; null where no dressing is on record.</param>
public sealed record SlitOutlook(
    double? EdgeMm,
    Slit? Slit,
    string? SlitRefusal,
    double? NeedsMm,
    DressingsLeft? Dressings,
    DressingHistory? History
)
{
    /// <summary>Whether the edge has become narrower than the slit needs.</summary>
    public bool IsAtItsLimit => EdgeMm is { } edge && NeedsMm is { } needs && edge < needs;

    /// <summary>Weighted heats until it is too short; null where the dressings are not known.</summary>
    public double? HeatsByLength =>
        Dressings is { } left && History is { } history ? history.Heats(left.Dressings * history.LossMm) : null;

    /// <summary>Looks at a slitter or punch.</summary>
    /// <param name="tool">How it opens the slit.</param>
    /// <param name="eye">The section of its eye; null where not known.</param>
    /// <param name="edgeMm">The length of its edge now; null where not known.</param>
    /// <param name="punchMm">The width t of a punch, 0 for a slitter.</param>
    /// <param name="leastEdgeMm">The smith's own least edge; where null, the shortest slit worth trying counts.</param>
    /// <param name="length">The length over all now; null where not known.</param>
    /// <param name="leastLength">The least safe length; null where not set.</param>
    /// <param name="history">What dressing did so far; null where none is on record.</param>
    /// <returns>The outlook.</returns>
    public static SlitOutlook Of(
        SlitTool tool,
        Section? eye,
        double? edgeMm,
        double punchMm,
        double? leastEdgeMm,
        Length? length,
        Length? leastLength,
        DressingHistory? history
    )
    {
        Slit? slit = null;
        string? refusal = null;
        SlitProposal? proposal = null;
        if (eye is not null)
        {
            if (edgeMm is { } edge)
            {
                _ = Slit.TryFor(tool, edge, punchMm, eye, out slit, out refusal);
            }

            _ = SlitProposal.TryFor(tool, punchMm, eye, out proposal, out string? _);
        }

        DressingsLeft? left = null;
        if (length is { } now && leastLength is { } least && history is not null)
        {
            _ = DressingsLeft.TryCount(now, Length.FromMm(history.LossMm), least, out left, out string? _);
        }

        return new(edgeMm, slit, refusal, leastEdgeMm ?? proposal?.Shortest.LengthMm, left, history);
    }
}
