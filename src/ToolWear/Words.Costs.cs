using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Decisions;

namespace ToolWear;

/// <content>What is said of costs.</content>
public static partial class Words
{
    /// <summary>What stands over the costs of heads.</summary>
    public const string HeadCostHeading = "Tooling a head, apart from bar, fuel and handle";

    /// <summary>What weighing a rework rests on.</summary>
    public const string ReforgeBasis =
        "A rework pays where a heat that it gains costs less than a heat of a new tool over its life.";

    internal const string CostsHeading = "Costs";
    internal const string HoursAsked = "Hours";
    internal const string ElseAsked = "Other cost";
    internal const string GainsAsked = "Heats gained";
    internal const string HoursMeaning = "How many hours the rework takes, such as 0.4.";
    internal const string ElseMeaning = "What else it costs, such as heat treatment; 0 for nothing.";
    internal const string GainsMeaning = "How many heats it gains, by your own experience.";
    internal const string AboutCosts =
        "What tools cost to make, a heat and a head: the forecast with its range, and beside it the true figure of tools that were scrapped. In the shop's own money at its own hourly rate. What was not noted is said.";

    /// <summary>No cost of such a tool is known.</summary>
    /// <param name="place">Its place.</param>
    /// <returns>A sentence.</returns>
    public static string NoCostOf(ToolPlace place) => $"no cost of any {place} is noted, so nothing can be weighed";

    /// <summary>What the cost of a place assumes, and what is left out of it.</summary>
    /// <param name="place">The place.</param>
    /// <returns>Sentences; none where all of it was noted there.</returns>
    public static IEnumerable<string> CostAssumptions(PlaceHeatCost place)
    {
        if (place.Cost.Total is null)
        {
            yield return $"{place.Tools}: no cost is noted.";
            yield break;
        }

        string[] left = [.. Unknown(place.Cost)];
        string borrowed = place.Cost.Borrowed.IsEmpty
            ? ""
            : $" {And([.. place.Cost.Borrowed])} as of such tools for other eyes";
        string missing = left.Length == 0 ? "" : $" {And(left)} noted nowhere and left out";
        if (borrowed.Length + missing.Length > 0)
        {
            yield return $"{place.Tools}:{borrowed}{(borrowed.Length > 0 && missing.Length > 0 ? ";" : "")}{missing}.";
        }
    }

    /// <summary>Whether a rework pays, in a word.</summary>
    /// <param name="answer">The answer.</param>
    /// <returns>Words.</returns>
    public static string ReforgeAnswer(ReforgeOrScrap answer) =>
        (answer.Reforge, IsClear(answer)) switch
        {
            (true, true) => "re-forge it",
            (true, false) => "re-forge it, but it is close: the range of a new one's cost reaches it",
            (false, true) => "scrap it and make a new one",
            (false, false) => "a new one, but it is close: the range of its cost reaches the rework's",
        };

    internal static string ReforgeSaid(ToolPlace place, ReforgeOrScrap answer) =>
        $"{place}: {ReforgeAnswer(answer)}. A heat costs {Money(answer.ReworkAHeat)} by the rework, {Money(answer.NewAHeat.Value)} by a new one ({MoneyRange(answer.NewAHeat)}).";

    internal static string NoAmount(string text) => $"\"{text}\": a number such as 0.4";

    internal static string ScrappedTrue(PlaceHeatCost place) =>
        place.TrueCostAHeat is { } cost
            ? $"true {Money(cost)} a heat, {place.Scrapped} scrapped at {About(place.TrueLife!.Value)} heats"
        : place.Scrapped > 0
            ? $"{place.Scrapped} scrapped at {About(place.TrueLife!.Value)} heats; their cost is not noted"
        : "none scrapped yet, so no true figure";

    internal static string TrueHead(HeadCost head) =>
        head.TrueCostAHead is { } cost
            ? $"with the true figures of scrapped tools at {head.TrueStages} of {head.Stages} stages {Money(cost)}"
            : "no tool of it was scrapped yet, so no true figure";

    internal static string WithoutStages(HeadCost head) =>
        head.WithoutStages.IsEmpty
            ? ""
            : $" Left out, for no cost of its tool is noted: {And([.. head.WithoutStages])}.";

    internal static string Money(double amount) => amount.ToString("F2", CultureInfo.InvariantCulture);

    internal static string MoneyRange(Estimate estimate) =>
        estimate.High90 is { } high ? $"{Money(estimate.Low90)} to {Money(high)}" : $"{Money(estimate.Low90)} or more";

    private static bool IsClear(ReforgeOrScrap answer) =>
        answer.ReworkAHeat < answer.NewAHeat.Low90 || answer.ReworkAHeat > answer.NewAHeat.High90;

    private static string And(string[] words) =>
        words.Length < 2 ? string.Concat(words) : $"{string.Join(", ", words[..^1])} and {words[^1]}";
}
