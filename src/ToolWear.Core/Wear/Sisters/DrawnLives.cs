using System.Collections.Immutable;
using ToolWear.Core.Wear.Figures;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Core.Wear.Sisters;

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
    private readonly double widening;

    private DrawnLives((KindPool, int[]) pooled, IReadOnlyList<WearHistory> kind, int draws, int seed, double widening)
    {
        (pool, place) = pooled;
        (this.kind, this.seed, this.widening) = (kind, seed, widening);
        shared = SharedDraw.Of(pool, draws, seed);
    }

    /// <summary>How many draws there are.</summary>
    public int Draws => shared.Length;

    /// <summary>Draws for a kind.</summary>
    /// <param name="kind">Its histories, those of scrapped tools too; none at all leaves what is common.</param>
    /// <param name="draws">How many draws, above zero.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="widening">How many times as wide they spread as the model says, at least 1.</param>
    /// <returns>The draws.</returns>
    public static DrawnLives Of(IReadOnlyList<WearHistory> kind, int draws, int seed, double widening = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        return new DrawnLives(KindPool.Of(kind), kind, draws, seed, widening);
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
        Mixture mixture = new(tool.Record, TargetWeights.Of(pool, tool.Group, tool.Likelihood));
        double[] heats = new double[shared.Length];
        Span<float> weight = stackalloc float[Grid.Row];
        for (int i = 0; i < heats.Length; i++)
        {
            SharedDraw draw = shared[i];
            Kernels.W[draw.Tau][draw.Mu[tool.Group]].CopyTo(weight);
            if (tool.Likelihood is { } likelihood)
            {
                Vectors.Multiply(weight, likelihood.At(draw.Node));
            }

            int l = SharedDraw.Pick(weight, Chance.Uniform(seed, i, stream, 0));
            heats[i] = mixture.At(draw.Shape, l).Heats(Chance.Uniform(seed, i, stream, 1), tool.Record);
        }

        return Array.ConvertAll(heats, new WiderDraws(widening, heats).Of);
    }

    /// <summary>The lives of tools that are still to be made.</summary>
    /// <param name="planned">What they will be like: a history with a limit, without readings and at no heats.</param>
    /// <returns>Their lives in each draw.</returns>
    public DrawnNewLives NewTools(WearHistory planned)
    {
        ToolRecord record =
            ToolRecord.Of(planned)
            ?? throw new ArgumentException("a tool that is planned has a limit", nameof(planned));
        int group = KindPool.GroupNumber(kind, planned.Group);
        Mixture mixture = new(record, TargetWeights.Of(pool, group, null));
        return new DrawnNewLives(shared, mixture, group, planned.Group, seed, widening);
    }
}
