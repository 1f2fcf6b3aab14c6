using ToolWear.Core.Tools;

namespace ToolWear.Core.Wear.Ranges;

// r = |score|/1.645, how far from the middle of the model's 90 % range a reading lay in parts of its half
/// <summary>How the ranges held that were said of the tools of one form and place: nine in ten should.</summary>
/// <param name="Form">The form's name.</param>
/// <param name="Place">The place in the series.</param>
/// <param name="Readings">How many of the last readings had a range said before them.</param>
/// <param name="Inside">How many of them lay in it.</param>
/// <param name="InsideModel">How many lay in what the model alone would have said, never wider.</param>
/// <param name="Widening">By how much ranges are widened now about their middle, at least 1: where fewer than 80 in 100 of
/// the last 20 to 25 lay in the model's, by the factor with which nine in ten would have.</param>
public sealed record KeptRanges(string Form, Place Place, int Readings, int Inside, int InsideModel, double Widening)
{
    private const double Share = 0.9;
    private const double TooFew = 0.8;

    /// <summary>By so many of the last readings ranges are widened, or by fewer where there are no more.</summary>
    internal const int Window = 25;

    /// <summary>Fewer say nothing.</summary>
    internal const int Least = 20;

    private const double EndOfRange = 1.6448536269514722;

    /// <summary>How many of some readings must lie in the model's range so that nothing is widened, however the rest lie.</summary>
    internal static int Enough(int readings) => (int)Math.Ceiling(TooFew * readings);

    /// <summary>Whether a reading lay in the model's range.</summary>
    internal static bool IsInside(ReadingScore reading) => Math.Abs(reading.Score) <= EndOfRange;

    /// <summary>Follows the readings from the first on.</summary>
    internal static KeptRanges Of(string form, Place place, IEnumerable<ReadingScore> scores)
    {
        List<double> last = [];
        (int readings, int inside, int model, double widening) = (0, 0, 0, 1);
        foreach (ReadingScore reading in scores.OrderBy(each => each.Entry))
        {
            double r = Math.Abs(reading.Score) / EndOfRange;
            (readings, inside, model) = (readings + 1, inside + (r <= widening ? 1 : 0), model + (r <= 1 ? 1 : 0));
            last.Add(r);
            last.RemoveRange(0, Math.Max(0, last.Count - Window));
            double held = last.Order().ElementAt((int)Math.Ceiling(Share * last.Count) - 1);
            bool isTooFew = last.Count >= Least && last.Count(each => each <= 1) < TooFew * last.Count;
            widening = isTooFew ? Math.Ceiling(100 * held) / 100 : 1;
        }

        return new(form, place, readings, inside, model, widening);
    }
}
