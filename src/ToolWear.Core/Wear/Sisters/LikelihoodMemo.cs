namespace ToolWear.Core.Wear.Sisters;

/// <summary>Remembers what the readings of a tool say: a reading of one tool leaves its sisters' as they are.</summary>
/// <remarks>Heats without a reading change nothing in it.</remarks>
internal static class LikelihoodMemo
{
    // the tools of a large shop, scrapped ones too, at some tens of kilobytes each
    private const int Most = 1000;
    private static readonly Memo<Read, ToolLikelihood> Remembered = new(Most);

    /// <summary>Forgets everything.</summary>
    internal static void Forget() => Remembered.Forget();

    /// <summary>The likelihood of a tool, or null: one without readings says nothing.</summary>
    /// <param name="tool">The tool.</param>
    /// <returns>The likelihood, remembered or made.</returns>
    internal static ToolLikelihood? Of(ToolRecord tool) =>
        tool.Readings == 0 ? null : Remembered.Get(new Read(tool), read => new ToolLikelihood(read.Tool));

    /// <summary>A tool by what its likelihood is made of: guessed life, rounding and readings, all in shares of its limit.</summary>
    private readonly struct Read(ToolRecord tool) : IEquatable<Read>
    {
        public ToolRecord Tool { get; } = tool;

        public bool Equals(Read other) =>
            Tool.N0.Equals(other.Tool.N0)
            && Tool.v_r.Equals(other.Tool.v_r)
            && Tool.Segments.Length == other.Tool.Segments.Length
            && Tool.Segments.Zip(other.Tool.Segments).All(pair => AreSame(pair.First, pair.Second));

        public override bool Equals(object? obj) => obj is Read other && Equals(other);

        public override int GetHashCode()
        {
            HashCode hash = new();
            hash.Add(Tool.N0);
            hash.Add(Tool.v_r);
            foreach (RecordedSegment segment in Tool.Segments)
            {
                hash.Add(segment.x0);
                foreach (double x in segment.x)
                {
                    hash.Add(x);
                }
            }

            return hash.ToHashCode();
        }

        private static bool AreSame(RecordedSegment one, RecordedSegment other) =>
            one.x0.Equals(other.x0) && one.n.AsSpan().SequenceEqual(other.n) && one.x.AsSpan().SequenceEqual(other.x);
    }
}
