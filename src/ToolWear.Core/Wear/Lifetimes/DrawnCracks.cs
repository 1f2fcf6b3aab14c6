using System.Collections.Immutable;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Sisters;

namespace ToolWear.Core.Wear.Lifetimes;

// S(k) = S_crack(n+k)/S_crack(n), S_crack(t) = exp(-(t/eta)^b):  k = eta ((n/eta)^b - ln U)^(1/b) - n,  U uniform
/// <summary>Cracks and breaks of tools of one sort, drawn beside their wear.</summary>
/// <remarks>Shape and scale are not known: each draw takes them once, for all tools of the sort. The same seed gives the
/// same draws.</remarks>
public sealed class DrawnCracks
{
    // a stream that no tool has
    private const long SortStream = -2;
    private const int CrackSlot = 2;

    private readonly ImmutableArray<(double Shape, double Scale)> shared;
    private readonly int seed;

    private DrawnCracks(ImmutableArray<(double, double)> shared, int seed) => (this.shared, this.seed) = (shared, seed);

    /// <summary>Draws for a sort.</summary>
    /// <param name="onRecord">The cracks and breaks on record.</param>
    /// <param name="guessHeats">How many heats such a tool usually lasts, above zero.</param>
    /// <param name="draws">How many draws, above zero.</param>
    /// <param name="seed">The seed.</param>
    /// <returns>The draws; null where no tool of the sort cracked or broke, so that the records say nothing.</returns>
    public static DrawnCracks? Of(ShopFailures onRecord, double guessHeats, int draws, int seed)
    {
        if (onRecord.Failures == 0)
        {
            return null;
        }

        SuddenFailures failures = SuddenFailures.Of(onRecord.Lives, guessHeats);
        (double, double) Draw(int i) =>
            failures.Fit is WeibullFit { Failures: >= WeibullFit.EnoughFailures } fit
                ? (fit.Shape, fit.Scale)
                : failures.WithPrior.At(Chance.Uniform(seed, i, SortStream, 0));
        return new DrawnCracks([.. Enumerable.Range(0, draws).Select(Draw)], seed);
    }

    /// <summary>The heats until one tool cracks in one draw.</summary>
    /// <param name="draw">Which draw, from 0.</param>
    /// <param name="stream">The tool's own number.</param>
    /// <param name="usedHeats">n, the weighted heats it stood since it was made, zero or more.</param>
    /// <returns>Weighted heats more.</returns>
    public double Heats(int draw, long stream, double usedHeats)
    {
        (double b, double eta) = shared[draw];
        double U = Chance.Uniform(seed, draw, stream, CrackSlot);
        double stood = Math.Pow(usedHeats / eta, b) - Math.Log(U);
        return Math.Clamp((eta * Math.Pow(stood, 1 / b)) - usedHeats, 0, HeatsLeft.Most);
    }
}
