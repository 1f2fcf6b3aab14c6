using System.Globalization;
using ToolWear.Core.Wear.Verdicts;

namespace ToolWear;

/// <content>The sentences about what is left in a tool.</content>
public static partial class Words
{
    /// <summary>Whether a tool lasts its next usual session.</summary>
    /// <param name="outlook">The chances.</param>
    /// <returns>A sentence without a full stop; it speaks of cracks only where some are on record.</returns>
    public static string LastsSession(SessionOutlook outlook) =>
        $"Lasts its next usual session ({Heats(outlook.Heats)} heats): {Chance(outlook.ByWear)} by wear"
        + (
            outlook.OnRecord.Failures == 0 ? ""
            : outlook.WithCracks is { } both ? $"; {Chance(both)} with cracks as on record ({OnRecord(outlook)})"
            : $"; cracks not counted, nobody knows its heats from new ({OnRecord(outlook)})"
        );

    /// <summary>A chance in hundreds; next to never and next to always in words.</summary>
    /// <param name="chance">0 to 1.</param>
    /// <returns>For example "97 in 100".</returns>
    public static string Chance(double chance) =>
        chance switch
        {
            < 0.005 => "next to no chance",
            >= 0.995 => "next to certain",
            _ => string.Create(CultureInfo.InvariantCulture, $"{chance * 100:0} in 100"),
        };

    private static string OnRecord(SessionOutlook outlook)
    {
        int failures = outlook.OnRecord.Failures;
        string leftOut = outlook.OnRecord.LeftOut is > 0 and int tools
            ? $", {tools} more left out: their heats are not known"
            : "";
        return $"{failures} {(failures == 1 ? "crack" : "cracks")} in {outlook.OnRecord.Lives.Length} such tools{leftOut}";
    }
}
