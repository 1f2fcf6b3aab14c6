using System.Numerics;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>The forward and backward pass of one cell after the other of a run.</summary>
internal sealed class WearSmoother
{
    private const double LeastVariance = 1e-12;

    private readonly ToolRecord tool;
    private readonly RecordedSegment segment;
    private readonly CellRun run;
    private readonly WearTimes times;
    private readonly double[] G;
    private readonly double[] before;
    private readonly double[] beforeP;
    private readonly double[] m;
    private readonly double[] P;

    internal WearSmoother(ToolRecord tool, RecordedSegment segment, CellRun run, WearTimes times)
    {
        (this.tool, this.segment, this.run, this.times) = (tool, segment, run, times);
        int size = times.Heats.Length;
        (before, beforeP, m, P) = (new double[size], new double[size], new double[size], new double[size]);
        G = new double[(size + 1) * run.w.Length];
        for (int j = 0; j <= size; j++)
        {
            Span<double> row = G.AsSpan(j * run.w.Length, run.w.Length);
            Rises.G(run.Curve, segment.x0, j == 0 ? 0 : times.Heats[j - 1], tool.N0, run.From, row);
        }
    }

    internal double Mean(int time) => m[time];

    internal double Variance(int time) => P[time] + LeastVariance;

    internal void Smooth(int cell)
    {
        Forward(cell);
        for (int j = times.Heats.Length - 2; j >= 0; j--)
        {
            double J = beforeP[j + 1] > 0 ? P[j] / beforeP[j + 1] : 0;
            m[j] += J * (m[j + 1] - before[j + 1]);
            P[j] += J * J * (P[j + 1] - beforeP[j + 1]);
        }
    }

    private void Forward(int cell)
    {
        ReadingFilter filter = default;
        filter.Start(segment.x0, run.Sigma, tool.v_r);
        double R1 = ReadingFilter.R1(run.Sigma, tool.v_r);
        for (int j = 0; j < times.Heats.Length; j++)
        {
            double d = G[((j + 1) * run.w.Length) + cell] - G[(j * run.w.Length) + cell];
            filter.Advance(new Vector<double>(d), run.Phi);
            (before[j], beforeP[j]) = (filter.m[0], filter.P[0]);
            if (times.Readings[j] is { } x)
            {
                _ = filter.Read(x, R1, out _);
            }

            (m[j], P[j]) = (filter.m[0], filter.P[0]);
        }
    }
}
