using ToolWear.Core.Wear.Trials;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.TrialPages;

/// <summary>The text of the trials: what can be said, and in one line how much cannot.</summary>
internal static class TrialPagesText
{
    /// <summary>Draws the page.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="trials">The comparisons, null while they are being worked out.</param>
    /// <param name="first">The first line shown.</param>
    /// <returns>How many lines there are.</returns>
    public static int Draw(Picture body, ShopTrialList? trials, int first)
    {
        string[] lines = trials is null ? [Words.WorkingOut] : [.. Lines(trials, Math.Max(20, body.Width))];
        for (int i = 0; i < body.Height && first + i < lines.Length; i++)
        {
            string line = lines[first + i];
            body.Put(0, i, line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong);
        }

        return lines.Length;
    }

    private static IEnumerable<string> Lines(ShopTrialList trials, int width)
    {
        foreach (ShopTrial trial in trials.Speaking)
        {
            yield return Words.TrialOf(trial);
            foreach (string line in Picture.Wrap(Words.TrialSays(trial), width - 2))
            {
                yield return "  " + line;
            }
        }

        foreach (string line in Picture.Wrap($"{Words.TrialsSilent(trials)}\n{Words.TrialAdvice}", width - 2))
        {
            yield return "  " + line;
        }
    }
}
