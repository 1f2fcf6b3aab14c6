namespace ToolWear.Core.Wear.Figures;

/// <summary>How many more weighted heats a tool lasts, given that it is not yet past its limit.</summary>
/// <remarks>Each figure is null where the readings do not bound it (beyond 20 000 heats); they never fall from first to last.</remarks>
/// <param name="Q05">One time in twenty it lasts less.</param>
/// <param name="Q10">One time in ten it lasts less.</param>
/// <param name="Q50">As often less as more.</param>
/// <param name="Q90">One time in ten it lasts more.</param>
/// <param name="Q95">One time in twenty it lasts more.</param>
public sealed record HeatsLeft(double? Q05, double? Q10, double? Q50, double? Q90, double? Q95)
{
    /// <summary>No tool is followed beyond so many heats.</summary>
    public const double Most = 20_000;

    /// <summary>What a tool has that is at or past its limit.</summary>
    public static HeatsLeft None { get; } = new(0, 0, 0, 0, 0);

    /// <summary>Whether the 90 % range is wider than the figure itself, or has no end: one reading more is worth it.</summary>
    public bool IsWide => Q50 is { } middle && (Q95 is not { } high || high - (Q05 ?? 0) > middle);

    /// <summary>The same wear under another load: k heats that are c times as hard take what c k usual ones take.</summary>
    /// <param name="c">How hard against the usual, above zero.</param>
    /// <returns>The heats of that load.</returns>
    public HeatsLeft AtLoad(double c)
    {
        double load = Finite.Positive(c);
        return new(Q05 / load, Q10 / load, Q50 / load, Q90 / load, Q95 / load);
    }

    internal HeatsLeft AtMost(double heats)
    {
        double? Least(double? q) => double.IsInfinity(heats) ? q : Math.Min(q ?? heats, heats);
        return new(Least(Q05), Least(Q10), Least(Q50), Least(Q90), Least(Q95));
    }

    // K has cdf (F(k) - F0)/(1 - F0): the wear only grows, so "first past after k" is "past at k"
    internal static HeatsLeft Of(Func<double, double> F, double F0, double scale)
    {
        if (F0 >= 1)
        {
            return None;
        }

        LogitRoots roots = new(k => (F(k) - F0) / (1 - F0), scale, Most);
        double? q50 = roots.At(0.50);
        (double? q05, double? q95) = (roots.At(0.05), roots.At(0.95));
        return new HeatsLeft(q05, roots.At(0.10), q50, roots.At(0.90), q95);
    }
}
