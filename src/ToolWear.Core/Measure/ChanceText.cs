using System.Globalization;

namespace ToolWear.Core.Measure;

/// <summary>A chance as a smith says it.</summary>
public static class ChanceText
{
    /// <summary>Says a chance, rounded to whole hundredths, but never as none and never as sure.</summary>
    /// <param name="chance">The chance, 0 to 1.</param>
    /// <returns>For example "64 in 100".</returns>
    public static string Of(double chance) =>
        chance switch
        {
            < 0.005 => "under 1 in 100",
            >= 0.995 => "over 99 in 100",
            _ => string.Create(CultureInfo.InvariantCulture, $"{chance * 100:0} in 100"),
        };
}
