using MathNet.Numerics;
using ToolWear.Core.Wear.Histories;

namespace ToolWear.Testing.Wear;

/// <summary>
/// The same model once more in plain loops: whole grids, double precision, nothing vectorised, shared, skipped or
/// reordered, and no code of the program but its histories. One tool of one kind.
/// </summary>
public sealed class PlainForecast
{
    private const int L = 104;
    private const int U = 52;
    private const int Noises = 6;
    private static readonly double[] Taus = [0.15, 0.28, 0.55];
    private static readonly double[] Lambda = [.. Enumerable.Range(0, L).Select(l => -3 + (0.07 * l))];
    private static readonly double[] Mu = [.. Enumerable.Range(0, U).Select(j => Lambda[2 * j])];
    private static readonly double[] PTau = Weights(Taus.Select(t => Bell(Math.Log(t), Math.Log(0.24), 0.45)));
    private static readonly double[] PKind = Weights(Mu.Select(mu => Bell(mu, -0.3, 0.35)));
    private static readonly double[][] A = [.. Mu.Select(k => Weights(Mu.Select(mu => Bell(mu, k, 0.25))))];
    private static readonly double[][][] W =
    [
        .. Taus.Select(tau => Mu.Select(mu => Weights(Lambda.Select(l => Bell(l, mu, tau)))).ToArray()),
    ];

    private static readonly (PlainCurve Curve, double P)[] Shapes = AllShapes();
    private static readonly (double Sigma, double Phi, double P)[] Noise = AllNoise();

    private readonly WearHistory target;
    private readonly double x0;
    private readonly List<(double W, double M, double P, double Phi, PlainCurve Curve, double N)> cells = [];

    public PlainForecast(IReadOnlyList<WearHistory> kind, int t)
    {
        target = kind[t];
        x0 = target.Last.StartMm!.Value / target.LimitMm!.Value;
        string[] groups = [.. kind.Select(history => history.Group).Distinct(StringComparer.Ordinal)];
        List<(double Log, double M, double P)[][]> all =
        [
            .. from shape in Shapes
            from noise in Noise
            select kind.Select(history => Run(history, shape.Curve, noise.Sigma, noise.Phi)).ToArray(),
        ];
        double[] maxima = [.. kind.Select((_, i) => all.Max(runs => runs[i].Max(cell => cell.Log)))];
        double[][] weight =
        [
            .. all.Select(
                (runs, node) =>
                {
                    double[][] lik =
                    [
                        .. runs.Select((run, i) => run.Select(cell => Math.Exp(cell.Log - maxima[i])).ToArray()),
                    ];
                    double p = Shapes[node / Noises].P * Noise[node % Noises].P;
                    double[] pi = new double[L];
                    for (int tau = 0; tau < Taus.Length; tau++)
                    {
                        AddPi(kind, t, groups, lik, tau, p * PTau[tau], pi);
                    }

                    return pi.Zip(lik[t], (a, b) => a * b).ToArray();
                }
            ),
        ];
        double whole = weight.Sum(row => row.Sum());
        for (int shape = 0; shape < Shapes.Length; shape++)
        {
            for (int l = 0; l < L; l++)
            {
                Merge(shape, l, q => (weight[q][l] / whole, all[q][t][l].M, all[q][t][l].P));
            }
        }
    }

    /// <summary>The wear to be expected now.</summary>
    public double WearNowMm => target.LimitMm!.Value * cells.Sum(cell => cell.W * cell.M);

    /// <summary>The chances of a first cut, and of a last part that runs faster or slower.</summary>
    public (double FirstCut, double Faster, double Slower) Chances =>
        (
            cells.Where(cell => cell.Curve.A > 0).Sum(cell => cell.W),
            cells.Where(cell => cell.Curve.D > 0).Sum(cell => cell.W),
            cells.Where(cell => cell.Curve.D < 0).Sum(cell => cell.W)
        );

    /// <summary>F(k).</summary>
    public double F(double k)
    {
        double sum = 0;
        foreach ((double w, double m, double P, double phi, PlainCurve curve, double N) in cells)
        {
            double dg = curve.Rise(x0, target.HeatsNow + k, N) - curve.Rise(x0, target.HeatsNow, N);
            double dc = curve.C(x0, target.HeatsNow + k) - curve.C(x0, target.HeatsNow);
            double V = P + (phi * dg) + dc + Math.Pow(0.1 * dg, 2);
            sum += w * 0.5 * SpecialFunctions.Erfc((1 - m - dg) / Math.Sqrt(V) / Math.Sqrt(2));
        }

        return sum;
    }

    private void Merge(int shape, int l, Func<int, (double W, double M, double P)> cell)
    {
        (double W, double M, double P)[] q = [.. Enumerable.Range(shape * Noises, Noises).Select(cell)];
        double w = q.Sum(each => each.W);
        if (w > 0)
        {
            double m = q.Sum(each => each.W * each.M) / w;
            double P = q.Sum(each => each.W * (each.P + Math.Pow(each.M - m, 2))) / w;
            double phi = q.Zip(Noise, (each, noise) => each.W * noise.Phi).Sum() / w;
            cells.Add((w, m, P, phi, Shapes[shape].Curve, target.GuessHeats * Math.Exp(Lambda[l])));
        }
    }

    private static void AddPi(
        IReadOnlyList<WearHistory> kind,
        int t,
        string[] groups,
        double[][] lik,
        int tau,
        double p,
        double[] pi
    )
    {
        double[][] F = [.. groups.Select(_ => Enumerable.Repeat(1.0, U).ToArray())];
        for (int i = 0; i < kind.Count; i++)
        {
            for (int mu = 0; mu < U && i != t; mu++)
            {
                double M = 0;
                for (int l = 0; l < L; l++)
                {
                    M += W[tau][mu][l] * lik[i][l];
                }

                F[Array.IndexOf(groups, kind[i].Group)][mu] *= M;
            }
        }

        double[] C = CWithout(F, Array.IndexOf(groups, kind[t].Group));
        for (int mu = 0; mu < U; mu++)
        {
            for (int l = 0; l < L; l++)
            {
                pi[l] += p * C[mu] * W[tau][mu][l];
            }
        }
    }

    // F[g] already lacks the target
    private static double[] CWithout(double[][] F, int g)
    {
        double[] C = new double[U];
        for (int k = 0; k < U; k++)
        {
            double D = PKind[k];
            for (int h = 0; h < F.Length; h++)
            {
                D *= h == g ? 1 : A[k].Zip(F[h], (a, f) => a * f).Sum();
            }

            for (int mu = 0; mu < U; mu++)
            {
                C[mu] += D * A[k][mu] * F[g][mu];
            }
        }

        return C;
    }

    private static (double Log, double M, double P)[] Run(
        WearHistory history,
        PlainCurve curve,
        double sigma,
        double phi
    )
    {
        double limit = history.LimitMm!.Value;
        double v_r = Math.Pow(history.ResolutionMm / limit, 2) / 12;
        double R1 = (sigma * sigma) + v_r;
        (double, double, double)[] row = new (double, double, double)[L];
        for (int l = 0; l < L; l++)
        {
            double N = history.GuessHeats * Math.Exp(Lambda[l]);
            (double log, double m, double P) = (0, 0, 0);
            foreach (WearSegment segment in history.Segments.Where(segment => segment.StartMm is not null))
            {
                double start = segment.StartMm!.Value / limit;
                (m, P) = (start, Math.Pow(0.5 * sigma, 2) + v_r);
                double before = 0;
                void To(double n)
                {
                    double d = curve.Rise(start, n, N) - curve.Rise(start, before, N);
                    (m, P) = (m + d, P + (phi * d) + curve.C(start, n) - curve.C(start, before));
                    before = n;
                }

                foreach (WearReading reading in segment.Readings)
                {
                    To(reading.Heats);
                    (m, P, double density) = Update(m, P, reading.WearMm / limit, R1);
                    log += Math.Log(density);
                }

                if (ReferenceEquals(segment, history.Segments[^1]))
                {
                    To(history.HeatsNow);
                    if (history.IsThrownOut)
                    {
                        (m, P, double density) = Update(m, P, 1, R1 + Math.Pow(0.15, 2));
                        log += Math.Log(density);
                    }
                }
            }

            row[l] = (log, m, P);
        }

        return row;
    }

    private static (double M, double P, double Density) Update(double m, double P, double x, double R1)
    {
        double e = x - m;
        double V1 = P + R1;
        double V2 = V1 + 0.25;
        double a1 = 0.95 * Math.Exp(-e * e / (2 * V1)) / Math.Sqrt(V1);
        double a2 = 0.05 * Math.Exp(-e * e / (2 * V2)) / Math.Sqrt(V2);
        double w = a1 / Math.Max(a1 + a2, 1e-300);
        double K1 = P / V1;
        double K2 = P / V2;
        double m1 = m + (K1 * e);
        double m2 = m + (K2 * e);
        double mb = (w * m1) + ((1 - w) * m2);
        double one = (P * (1 - K1)) + Math.Pow(m1 - mb, 2);
        double two = (P * (1 - K2)) + Math.Pow(m2 - mb, 2);
        return (mb, (w * one) + ((1 - w) * two), Math.Max(a1 + a2, 1e-300));
    }

    private static (PlainCurve, double)[] AllShapes()
    {
        PlainCurve[] curves =
        [
            .. from a in (double[])[0, 0.35]
            from b1 in (double[])[0.25, 0.4, 0.6, 0.8, 1, 1.25, 1.6]
            from d in (double[])[-0.4, 0, 0.4, 0.8]
            select new PlainCurve(b1, d, a),
        ];
        double[] spread = Weights(
            curves.Select(c =>
                (c.A == 0 ? 0.87 : 0.13)
                * ((0.8 * Bell(Math.Log(c.B1), 0, 0.2) / 0.2) + (0.2 * Bell(Math.Log(c.B1), 0, 0.6) / 0.6))
                * Bell(c.D, 0.3, 0.35)
            )
        );
        return [.. curves.Zip(spread, (c, p) => (c, (0.7 * p) + (c is { B1: 1, D: 0, A: 0 } ? 0.3 : 0)))];
    }

    private static (double, double, double)[] AllNoise()
    {
        (double Sigma, double Phi)[] pairs =
        [
            .. from sigma in (double[])[0.045, 0.13] from phi in (double[])[0.003, 0.015, 0.06] select (sigma, phi),
        ];
        double[] p = Weights(
            pairs.Select(q =>
                Bell(Math.Log(q.Sigma), Math.Log(0.085), 0.5) * Bell(Math.Log(q.Phi), Math.Log(0.018), 0.9)
            )
        );
        return [.. pairs.Zip(p, (q, each) => (q.Sigma, q.Phi, each))];
    }

    private static double Bell(double y, double c, double s) => Math.Exp(-Math.Pow((y - c) / s, 2) / 2);

    private static double[] Weights(IEnumerable<double> values)
    {
        double[] weights = [.. values];
        double sum = weights.Sum();
        return [.. weights.Select(weight => weight / sum)];
    }

    private sealed record PlainCurve(double B1, double D, double A)
    {
        private double B2 => B1 * Math.Exp(D);

        private double Uk => Math.Pow(0.5, 1 / B2);

        public double Rise(double x0, double n, double N)
        {
            double u = (x0 > 0 ? Inverse(x0) : 0) + (n / N);
            return n > 0 ? G(u)
                : x0 > 0 ? Math.Max(x0, A)
                : 0;
        }

        public double C(double x0, double n) => x0 <= 0 && n > 0 ? Math.Pow(0.3 * A, 2) : 0;

        private double G(double u) => A + ((1 - A) * (u >= Uk ? Math.Pow(u, B2) : 0.5 * Math.Pow(u / Uk, B1)));

        private double Inverse(double x)
        {
            double y = (x - A) / (1 - A);
            return y <= 0 ? 0
                : y >= 0.5 ? Math.Pow(y, 1 / B2)
                : Uk * Math.Pow(y / 0.5, 1 / B1);
        }
    }
}
