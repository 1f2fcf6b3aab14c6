using System.Globalization;

namespace ToolWear.Results.Looks;

/// <summary>What the year says, as a verb and on its screen.</summary>
internal static class YearWords
{
    public const string LossesHeading = "What was lost";

    public const string LossesBasis =
        "Heats: weighted, from new, of the tools whose heats are known; half of them reached the middle. Hand: who worked in the last session of the tool. A few tools prove nothing; what led to it is what the smith said.";

    public const string YearCauses = "Scrapped for";
    public const string YearHeads = "Heads, and what one costs in tooling by the costs of today";
    public const string YearMeasuredHeading = "How much was measured";
    public const string NothingScrapped = "nothing in this year";
    public const string NothingForged = "no session in this year";
    public const string NoToolsThen = "no tool in this year";

    public static string YearHeading(int? year) =>
        year is { } known ? string.Create(CultureInfo.InvariantCulture, $"Year {known}") : "Year";
}
