namespace ToolWear.Core.Wear.OneTool;

/// <summary>How far a tool should be taken in one day.</summary>
public static class EnoughToday
{
    /// <summary>The most heats that are spoken of.</summary>
    public const int MostAhead = 200;

    // common practice, no source: as for the verdict "near its limit"
    private const double EnoughAt = 0.2;

    /// <summary>Heats up to where its verdict would be "near its limit".</summary>
    /// <param name="chancePastLimit">The chance that it is past its limit after k more heats; null where no forecast speaks.</param>
    /// <returns>Whole weighted heats from 0 to 200, below zero where it is near now; null where no forecast speaks.</returns>
    public static int? Of(Func<double, double?> chancePastLimit)
    {
        if (chancePastLimit(0) is null)
        {
            return null;
        }

        int low = -1;
        int high = MostAhead;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            bool isInside = chancePastLimit(middle) <= EnoughAt;
            (low, high) = isInside ? (middle, high) : (low, middle - 1);
        }

        return low;
    }
}
