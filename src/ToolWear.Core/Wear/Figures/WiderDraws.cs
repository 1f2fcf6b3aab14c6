namespace ToolWear.Core.Wear.Figures;

/// <summary>Moves drawn heats away from their middle, as far as the ranges of their kind are widened.</summary>
/// <param name="widening">How many times as wide, at least 1.</param>
/// <param name="like">Draws of the same distribution.</param>
internal sealed class WiderDraws(double widening, IEnumerable<double> like)
{
    private readonly double[] sorted = widening == 1 ? [] : [.. like.Where(heats => heats > 0).Order()];

    /// <summary>The draw in its new place; 0, past its limit, stays.</summary>
    internal double Of(double heats)
    {
        if (sorted.Length == 0 || heats <= 0)
        {
            return heats;
        }

        int at = Array.BinarySearch(sorted, heats);
        double share = ((at < 0 ? ~at : at) + 0.5) / (sorted.Length + 1);
        double to = Math.Clamp((NormalCurve.Widened(share, widening) * sorted.Length) - 0.5, 0, sorted.Length - 1);
        double low = sorted[(int)to];
        return low + ((to - (int)to) * (sorted[Math.Min((int)to + 1, sorted.Length - 1)] - low));
    }
}
