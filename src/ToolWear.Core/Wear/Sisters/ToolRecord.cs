using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.CompilerServices;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Core.Wear.Sisters;

// x0 > 0 (dressed, or entered in use):  u0 = Ginv(x0);  g(0) = max(x0,a);  g(n) = G(u0 + n/N);  c = 0
// x0 <= 0 (new, or restored):           g(0) = 0;  g(n) = G(n/N);  c(0) = 0, c(n) = (.3a)^2 for n > 0
// N = N0 exp(lambda)
/// <summary>One stretch in shares of the limit.</summary>
/// <param name="Place">Its place in the history.</param>
/// <param name="x0">The wear at its start.</param>
/// <param name="n">Heats of each reading since the start.</param>
/// <param name="x">The readings.</param>
/// <param name="v">What each reading's variance has beside sigma^2: rounding, and .15^2 where only the eye saw it worn out.</param>
internal sealed record Stretch(int Place, double x0, double[] n, double[] x, double[] v)
{
    /// <summary>g after n heats at neighbouring lambdas, as many as g is long.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void g(Shape shape, double n, double N0, int from, Span<double> g)
    {
        (double start, double u0, double perN) = At(shape, n, N0);
        g.Fill(start);
        for (int l = 0; l < g.Length && n > 0; l += Vector<double>.Count)
        {
            Vector<double> expMinusLambda = new(Grid.ExpMinusLambda.AsSpan()[(from + l)..]);
            shape.G(new Vector<double>(u0) + (expMinusLambda * perN)).CopyTo(g[l..]);
        }
    }

    /// <summary>The same in the precision of the likelihoods.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal void g(Shape shape, double n, double N0, int from, Span<float> g)
    {
        (double start, double u0, double perN) = At(shape, n, N0);
        g.Fill((float)start);
        for (int l = 0; l < g.Length && n > 0; l += Vectors.Width)
        {
            Vector<float> expMinusLambda = new(Grid.ExpMinusLambdaFloat.AsSpan()[(from + l)..]);
            shape.G(new Vector<float>((float)u0) + (expMinusLambda * (float)perN)).CopyTo(g[l..]);
        }
    }

    /// <summary>c after n heats.</summary>
    internal double c(Shape shape, double n) => x0 <= 0 && n > 0 ? shape.c : 0;

    /// <summary>Whether both have the same readings from the same start.</summary>
    internal bool ReadsLike(Stretch other) =>
        x0 == other.x0
        && n.AsSpan().SequenceEqual(other.n)
        && x.AsSpan().SequenceEqual(other.x)
        && v.AsSpan().SequenceEqual(other.v);

    private (double Start, double u0, double PerN) At(Shape shape, double n, double N0) =>
        x0 > 0 ? (Math.Max(x0, shape.a), shape.Inverse(x0), n / N0) : (0, 0, n / N0);
}

/// <summary>A tool's history in shares of its limit, so that the prior is free of units.</summary>
/// <param name="Limit">The limit in mm.</param>
/// <param name="N0">The guessed life in heats.</param>
/// <param name="v_r">Variance of rounding to the caliper's step: (resolution/limit)^2/12.</param>
/// <param name="Now">Heats since the start of the last stretch.</param>
/// <param name="Stretches">Those whose start is known.</param>
internal sealed record ToolRecord(double Limit, double N0, double v_r, double Now, ImmutableArray<Stretch> Stretches)
{
    // sd of the wear at which a tool is thrown out that nobody measured
    private const double ByEye = 0.15;

    /// <summary>Readings in all stretches together.</summary>
    internal int Readings { get; } = Stretches.Sum(stretch => stretch.n.Length);

    /// <summary>The stretch that runs now.</summary>
    internal Stretch Last => Stretches[^1];

    /// <summary>The record of a history, or null where it has no limit.</summary>
    internal static ToolRecord? Of(WearHistory history)
    {
        if ((history.LimitMm ?? (history.IsByHeatsAlone ? 1 : null)) is not { } limit)
        {
            return null;
        }

        double step = history.IsByHeatsAlone ? 0 : history.ResolutionMm / limit;
        double rounding = step * step / 12;
        Stretch[] stretches =
        [
            .. history
                .Segments.Index()
                .Where(at => at.Item.StartMm is not null)
                .Select(at => Scaled(at.Index, at.Item, limit, rounding)),
        ];
        if (history.IsThrownOut && history.Last.StartMm is not null)
        {
            // people throw out near the limit, not at it: a guess, no record
            Stretch last = stretches[^1];
            double v = rounding + (ByEye * ByEye);
            stretches[^1] = last with { n = [.. last.n, history.HeatsNow], x = [.. last.x, 1], v = [.. last.v, v] };
        }

        return new ToolRecord(limit, history.GuessHeats, rounding, history.HeatsNow, [.. stretches]);
    }

    /// <summary>Whether both have the same readings at the same heats, and so the same likelihood.</summary>
    internal bool ReadsLike(ToolRecord other) =>
        (N0, v_r) == (other.N0, other.v_r)
        && Stretches
            .Where(stretch => stretch.n.Length > 0)
            .Zip(other.Stretches.Where(stretch => stretch.n.Length > 0), (one, two) => one.ReadsLike(two))
            .All(same => same)
        && Readings == other.Readings;

    /// <summary>d = g(n_j) - g(n_{j-1}) for every reading of every stretch, then from the last reading to now.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="from">The first lambda.</param>
    /// <param name="count">How many lambdas, a whole number of vectors.</param>
    /// <param name="d">Room for two rows more than readings.</param>
    internal void Rises(Shape shape, int from, int count, Span<float> d)
    {
        foreach (Stretch stretch in Stretches)
        {
            stretch.g(shape, 0, N0, from, d[..count]);
            int times = stretch.n.Length + (ReferenceEquals(stretch, Last) ? 1 : 0);
            for (int j = 0; j < times; j++)
            {
                stretch.g(shape, j < stretch.n.Length ? stretch.n[j] : Now, N0, from, d.Slice(Grid.Row, count));
                Vectors.TakeFrom(d[..count], d.Slice(Grid.Row, count));
                d = d[Grid.Row..];
            }
        }
    }

    /// <summary>Filters all readings at one node, and goes on to now.</summary>
    /// <param name="shape">The node's shape.</param>
    /// <param name="noise">Its sigma and phi.</param>
    /// <param name="d">The rises at the lambdas asked for.</param>
    /// <param name="filter">What is left in it stands at now.</param>
    /// <param name="loglik">Where ln of the likelihood is added.</param>
    /// <param name="w">Where the chance goes that a reading is sound, a row each.</param>
    internal void Filter(
        Shape shape,
        (double Sigma, double Phi) noise,
        ReadOnlySpan<float> d,
        ReadingFilter filter,
        Span<float> loglik,
        Span<float> w
    )
    {
        double c = 0;
        foreach (Stretch stretch in Stretches)
        {
            filter.Start(stretch.x0, noise.Sigma, v_r);
            c = 0;
            for (int j = 0; j < stretch.n.Length; j++)
            {
                filter.Advance(d, noise.Phi, stretch.c(shape, stretch.n[j]) - c);
                filter.Read(stretch.x[j], (noise.Sigma * noise.Sigma) + stretch.v[j], loglik, w);
                c = stretch.c(shape, stretch.n[j]);
                d = d[Grid.Row..];
                w = w[Grid.Row..];
            }
        }

        filter.Advance(d, noise.Phi, Last.c(shape, Now) - c);
    }

    private static Stretch Scaled(int place, WearSegment segment, double limit, double rounding) =>
        new(
            place,
            segment.StartMm!.Value / limit,
            [.. segment.Readings.Select(reading => reading.Heats)],
            [.. segment.Readings.Select(reading => reading.WearMm / limit)],
            [.. segment.Readings.Select(_ => rounding)]
        );
}
