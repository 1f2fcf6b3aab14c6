namespace ToolWear.Core.Wear.Sisters;

/// <summary>Remembers what the readings of a tool say: a reading of one tool leaves its sisters' as they are.</summary>
/// <remarks>Heats without a reading change nothing in it.</remarks>
internal static class LikelihoodMemo
{
    // more tools than a shop forges in a life, scrapped ones too, at some kilobytes each. Where a kind has more tools
    // than are remembered, none of them is: they are asked for one after the other, the one forgotten longest next
    private const int Most = 10_000;
    private static readonly Memo<Read, ToolLikelihood> Remembered = new(Most);

    /// <summary>Forgets everything.</summary>
    internal static void Forget() => Remembered.Forget();

    /// <summary>The likelihood of a tool, or null: one without readings says nothing.</summary>
    /// <param name="tool">The tool.</param>
    /// <param name="isOfLargeKind">Whether its kind is large, so that it will agree on very few nodes.</param>
    /// <returns>The likelihood, remembered or made.</returns>
    internal static ToolLikelihood? Of(ToolRecord tool, bool isOfLargeKind) =>
        tool.Readings == 0
            ? null
            : Remembered.Get(new Read(tool), read => new ToolLikelihood(read.Tool, !isOfLargeKind));

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
