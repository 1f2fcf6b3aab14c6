using System.Globalization;
using ToolWear.Pens;
using ToolWear.Wording;

namespace ToolWear.Screens.Drawing;

/// <summary>How far something is, in a row of signs that any font has.</summary>
internal static class ProgressBar
{
    private const int Signs = 30;

    /// <summary>Draws what is said while something is worked out.</summary>
    /// <param name="body">Where to.</param>
    /// <param name="share">The share that is done, 0 to 1; null where it is not worth a bar yet.</param>
    public static void Draw(Picture body, double? share)
    {
        int at = body.Put(0, 0, Words.WorkingOut, Ink.Quiet);
        if (share is { } done)
        {
            int full = (int)Math.Round(Math.Clamp(done, 0, 1) * Signs);
            at = body.Put(at + 2, 0, $"[{new string('#', full)}{new string('.', Signs - full)}]");
            body.Put(at + 2, 0, PercentDone(done));
        }
    }

    private static string PercentDone(double share) => (share * 100).ToString("0", CultureInfo.InvariantCulture) + " %";
}
