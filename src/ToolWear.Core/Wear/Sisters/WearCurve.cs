namespace ToolWear.Core.Wear.Sisters;

/// <summary>The course of wear over a tool's life: G(u), the share of the limit that is gone after the share u of the life.</summary>
/// <remarks>Whatever the curve, G(0) = 0, G(1) = 1, it rises, and it goes on beyond 1.</remarks>
internal abstract class WearCurve
{
    /// <summary>ln of the curve's weight before any reading, up to a constant common to all curves.</summary>
    internal abstract double LogPrior { get; }

    /// <summary>The power that describes the curve best: below 1 it runs in, above 1 it speeds up.</summary>
    internal abstract double Power { get; }

    /// <summary>G at each u.</summary>
    /// <param name="u">Shares of the life, zero or more.</param>
    /// <param name="G">Where the shares of the limit go, as long as u.</param>
    internal abstract void Mean(ReadOnlySpan<double> u, Span<double> G);

    /// <summary>The share of the life after which the share x of the limit is gone.</summary>
    /// <param name="x">A share of the limit; zero or less gives zero.</param>
    internal abstract double Inverse(double x);
}
