using MathNet.Numerics;
using ToolWear.Core.Wear;

namespace ToolWear.Testing.Wear;

/// <summary>
/// The same model once more in plain loops: nothing vectorised, shared, skipped or reordered, and no code of the program
/// but its histories. One tool of one kind; F(k) of that tool.
/// </summary>
public sealed class PlainForecast
{
    private const int L = 176;
    private const int U = 59;
    private static readonly double[] Sigma = [0.03, 0.05, 0.08, 0.13, 0.20];
    private static readonly double[] Phi = [0.002, 0.008, 0.02, 0.045, 0.1];
    private static readonly double[] Tau = [0.12, 0.2, 0.3, 0.45, 0.7];
    private static readonly double[] B = [0.36, 0.46, 0.60, 0.77, 1, 1.25, 1.56, 1.95, 2.4];
    private static readonly double[] Lambda = [.. Enumerable.Range(0, L).Select(l => -3 + (0.04 * l))];
    private static readonly double[] Mu = [.. Enumerable.Range(0, U).Select(j => -3 + (0.12 * j))];
    private static readonly double[] PSigma = Weights(Sigma, s => (Math.Log(s) - Math.Log(0.085)) / 0.5);
    private static readonly double[] PPhi = Weights(Phi, p => (Math.Log(p) - Math.Log(0.018)) / 0.9);
    private static readonly double[] PTau = Weights(Tau, t => (Math.Log(t) - Math.Log(0.28)) / 0.45);
    private static readonly double[] PB = Weights(B, b => Math.Log(b) / 0.2);
    private static readonly double[] PKind = Weights(Mu, mu => (mu + 0.3) / 0.45);
    private static readonly double[][] A = [.. Mu.Select(k => Weights(Mu, mu => (mu - k) / 0.25))];
    private static readonly double[][][] W =
    [
        .. Tau.Select(tau => Mu.Select(mu => Weights(Lambda, l => (l - mu) / tau)).ToArray()),
    ];

    private readonly WearHistory target;
    private readonly List<(double W, double M, double P, double B, double Phi, double N)> cells = [];

    public PlainForecast(IReadOnlyList<WearHistory> kind, int t)
    {
        target = kind[t];
        string[] groups = [.. kind.Select(history => history.Group).Distinct(StringComparer.Ordinal)];
        List<(double Log, double M, double P)[][]> all =
        [
            .. Nodes().Select(node => kind.Select(history => Run(history, node.Sigma, node.Phi, node.B)).ToArray()),
        ];
        double[] maxima = [.. kind.Select((_, i) => all.Max(runs => runs[i].Max(cell => cell.Log)))];
        foreach (((_, double phi, double b, double p), (double Log, double M, double P)[][] runs) in Nodes().Zip(all))
        {
            double[][] lik = [.. runs.Select((run, i) => run.Select(cell => Math.Exp(cell.Log - maxima[i])).ToArray())];
            double[] pi = new double[L];
            for (int tau = 0; tau < Tau.Length; tau++)
            {
                AddPi(kind, t, groups, lik, tau, p * PTau[tau], pi);
            }

            for (int l = 0; l < L; l++)
            {
                double N = target.GuessHeats * Math.Exp(Lambda[l]);
                cells.Add((pi[l] * lik[t][l], runs[t][l].M, runs[t][l].P, b, phi, N));
            }
        }

        Normalise();
        cells.RemoveAll(cell => cell.W < 1e-9);
        Normalise();
    }

    public double F(double k)
    {
        double sum = 0;
        foreach ((double w, double m, double P, double b, double phi, double N) in cells)
        {
            double d = G(target.Last, N, b, target.HeatsNow + k) - G(target.Last, N, b, target.HeatsNow);
            double z = (m + d - 1) / Math.Sqrt(P + (phi * d) + 1e-12);
            sum += w * 0.5 * SpecialFunctions.Erfc(-z / Math.Sqrt(2));
        }

        return sum;
    }

    public double WearNowMm => target.LimitMm!.Value * cells.Sum(cell => cell.W * cell.M);

    private static IEnumerable<(double Sigma, double Phi, double B, double P)> Nodes() =>
        from s in Enumerable.Range(0, Sigma.Length)
        from p in Enumerable.Range(0, Phi.Length)
        from b in Enumerable.Range(0, B.Length)
        select (Sigma[s], Phi[p], B[b], PSigma[s] * PPhi[p] * PB[b]);

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

    private static (double Log, double M, double P)[] Run(WearHistory history, double sigma, double phi, double b)
    {
        double limit = history.LimitMm!.Value;
        double v_r = Math.Pow(history.ResolutionMm / limit, 2) / 12;
        double R1 = (sigma * sigma) + v_r;
        (double, double, double)[] row = new (double, double, double)[L];
        for (int l = 0; l < L; l++)
        {
            double N = history.GuessHeats * Math.Exp(Lambda[l]);
            double log = 0;
            double m = 0;
            double P = 0;
            foreach (WearSegment segment in history.Segments)
            {
                m = segment.StartMm!.Value / limit;
                P = Math.Pow(0.5 * sigma, 2) + v_r;
                double before = 0;
                foreach (WearReading reading in segment.Readings)
                {
                    double d = G(segment, N, b, reading.Heats, limit) - G(segment, N, b, before, limit);
                    (m, P, double density) = Update(m + d, P + (phi * d), reading.WearMm / limit, R1);
                    log += Math.Log(density);
                    before = reading.Heats;
                }

                if (ReferenceEquals(segment, history.Segments[^1]))
                {
                    double d = G(segment, N, b, history.HeatsNow, limit) - G(segment, N, b, before, limit);
                    (m, P) = (m + d, P + (phi * d));
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

    private double G(WearSegment segment, double N, double b, double n) => G(segment, N, b, n, target.LimitMm!.Value);

    private static double G(WearSegment segment, double N, double b, double n, double limit)
    {
        double x0 = segment.StartMm!.Value / limit;
        double equal = x0 > 0 ? N * Math.Pow(x0, 1 / b) : 0;
        return Math.Pow((equal + n) / N, b);
    }

    private static double[] Weights(double[] values, Func<double, double> z)
    {
        double[] weights = [.. values.Select(value => Math.Exp(-z(value) * z(value) / 2))];
        double sum = weights.Sum();
        return [.. weights.Select(weight => weight / sum)];
    }

    private void Normalise()
    {
        double sum = cells.Sum(cell => cell.W);
        for (int i = 0; i < cells.Count; i++)
        {
            cells[i] = cells[i] with { W = cells[i].W / sum };
        }
    }
}
