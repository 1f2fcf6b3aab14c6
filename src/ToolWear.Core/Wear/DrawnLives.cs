using System.Collections.Immutable;
using ToolWear.Core.Wear.Sisters;

namespace ToolWear.Core.Wear;

/// <summary>Remaining heats of the tools of one kind, drawn together.</summary>
/// <remarks>
/// What is not known of the kind (how fast it wears, how much its tools differ) is shared by all its tools and does not
/// average out over them: each draw takes it once, then every tool's own life. The shares of draws agree with F(k) of
/// <see cref="SisterForecast"/>. The same seed gives the same draws.
/// </remarks>
public sealed class DrawnLives
{
    private readonly KindPool pool;
    private readonly int[] place;
    private readonly IReadOnlyList<WearHistory> kind;
    private readonly ImmutableArray<SharedDraw> shared;
    private readonly int seed;

    private DrawnLives(KindPool pool, int[] place, IReadOnlyList<WearHistory> kind, int draws, int seed)
    {
        (this.pool, this.place, this.kind, this.seed) = (pool, place, kind, seed);
        shared = SharedDraw.Of(pool, draws, seed);
    }

    /// <summary>How many draws there are.</summary>
    public int Draws => shared.Length;

    /// <summary>Draws for a kind.</summary>
    /// <param name="kind">Its histories, scrapped and planned tools too; a planned one has no readings and no heats.</param>
    /// <param name="draws">How many draws, above zero.</param>
    /// <param name="seed">The seed.</param>
    /// <returns>The draws, or null where no history has a limit.</returns>
    public static DrawnLives? Of(IReadOnlyList<WearHistory> kind, int draws, int seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        (KindPool? pool, int[] place) = KindPools.Of(kind);
        return pool is null ? null : new DrawnLives(pool, place, kind, draws, seed);
    }

    /// <summary>The heats left of one tool in each draw.</summary>
    /// <param name="history">The place of its history among those of the kind.</param>
    /// <param name="stream">The tool's own number: tools of one history with different numbers are twins of it, with the
    /// shared part in common and a life of their own. Gauge marks of one tool share the number.</param>
    /// <returns>Weighted heats, zero where it is past its limit; null where nothing can be said of that history.</returns>
    public double[]? HeatsLeft(int history, long stream)
    {
        if (place[history] < 0 || kind[history].Last.StartMm is null)
        {
            return null;
        }

        PooledTool tool = pool.Tools[place[history]];
        Dictionary<int, CellRun> runs = Runs(tool.Record);
        double[] heats = new double[shared.Length];
        Span<double> weight = stackalloc double[Grid.Lambdas];
        for (int i = 0; i < heats.Length; i++)
        {
            SharedDraw draw = shared[i];
            Kernels.W(draw.Tau, draw.Mu[tool.Group]).CopyTo(weight);
            if (tool.Likelihood is { } likelihood)
            {
                Vectors.Multiply(weight, likelihood.At(draw.Node));
            }

            int l = SharedDraw.Pick(weight, Chance.Uniform(seed, i, stream, 0));
            CellRun run = runs[draw.Node];
            Passage passage = new(run.m[l], run.P[l], run.GNow[l], run.Phi);
            heats[i] = passage.Heats(Chance.Uniform(seed, i, stream, 1), run.Curve, tool.Record, Grid.Lambda(l));
        }

        return heats;
    }

    private Dictionary<int, CellRun> Runs(ToolRecord record)
    {
        double[] all = new double[Grid.Lambdas];
        Array.Fill(all, 1.0);
        ImmutableArray<CellRun> runs =
        [
            .. shared
                .Select(draw => draw.Node)
                .Distinct()
                .Order()
                .Select(node => CellRun.Of(node, all, 0, Grid.Lambdas - 1)),
        ];
        _ = CellStates.Fill(record, runs);
        return runs.ToDictionary(run => run.Node);
    }
}
