namespace ToolWear.Core.Wear.Sisters;

/// <summary>The times of a segment in order: its readings and the heats that were asked for.</summary>
/// <param name="Heats">Heats since the start of the segment.</param>
/// <param name="Readings">The reading at that time, or null.</param>
/// <param name="Asked">Which of the asked-for heats it is, or -1.</param>
internal sealed record WearTimes(double[] Heats, double?[] Readings, int[] Asked)
{
    internal static WearTimes Of(RecordedSegment segment, IReadOnlyList<double> asked)
    {
        // a reading comes before what is asked at the same heats
        List<(double n, double? x, int asked)> times =
        [
            .. segment
                .n.Zip(segment.x, (n, x) => (n, (double?)x, -1))
                .Concat(asked.Select((n, i) => (Finite.NotNegative(n), (double?)null, i)))
                .OrderBy(time => time.Item1),
        ];
        return new WearTimes(
            [.. times.Select(time => time.n)],
            [.. times.Select(time => time.x)],
            [.. times.Select(time => time.asked)]
        );
    }

    /// <summary>Adds a cell's wear at each asked-for time to those of that time.</summary>
    internal void Collect(WearSmoother smoother, double w, WearCells[] at)
    {
        for (int j = 0; j < Heats.Length; j++)
        {
            if (Asked[j] >= 0)
            {
                at[Asked[j]].Add(w, smoother.Mean(j), smoother.Variance(j));
            }
        }
    }
}
