using System.Globalization;
using ToolWear.Results;

namespace ToolWear;

/// <content>What is said of a year.</content>
public static partial class Words
{
    internal const string YearCauses = "Scrapped for";
    internal const string YearHeads = "Heads, and what one costs in tooling by the costs of today";
    internal const string YearMeasuredHeading = "How much was measured";
    internal const string NothingScrapped = "nothing in this year";
    internal const string NothingForged = "no session in this year";
    internal const string NoToolsThen = "no tool in this year";
    internal const string AboutYear =
        "A year looked back on. Half last: half of such tools have ended by so many heats from new, by all records to the end of the year; those still at work are taken for what they are; nineteen times in twenty between the two figures. Tools whose heats before nobody knows are left out there. A reading followed: heats after which the tool was read before it was reworked or scrapped.";

    internal static string YearHeading(int? year) =>
        year is { } known ? string.Create(CultureInfo.InvariantCulture, $"Year {known}") : "Year";

    internal const string YearBasisShort =
        "Half last: half of such tools have ended by so many heats from new, by all records to the end of the year (in brackets: nineteen times in twenty between).";

    internal static string HeadsInSessions(Cell heads, Cell sessions, Cell uncounted) =>
        $"{(heads.IsNumber ? $"{heads.Shown} heads" : "heads not counted")} in {sessions.Shown} "
        + (sessions.Number is 1 ? "session" : "sessions")
        + (heads.IsNumber && uncounted.Number > 0 ? $", {uncounted.Shown} not counted" : "");

    internal static string HeadCosts(Cell cost) => cost.IsNumber ? $"{cost.Shown} each" : "no cost";

    internal static string MeasuredInYear(System.Collections.Immutable.ImmutableArray<Cell> measured) =>
        $"{measured[0].Shown} readings, looked over {measured[1].Shown} times; of {measured[2].Shown} heats worked a reading followed {measured[3].Shown}"
        + (measured[4].IsNumber ? $", {measured[4].Shown} in 100" : "")
        + ". Heats are weighted by their work.";
}
