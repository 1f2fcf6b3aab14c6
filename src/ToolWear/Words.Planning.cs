using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear.Lifetimes;

namespace ToolWear;

/// <content>What is said of plans, costs and sections.</content>
public static partial class Words
{
    /// <summary>What stands where a tool is to be made into another. Common practice, no source.</summary>
    public const string MakeIntoCaution =
        "By shape alone: not after a crack or an over-heat, nor in unknown steel without trial.";

    /// <summary>What a comparison rests on.</summary>
    public const string TrialBasis =
        "Life of A to B: how many times as long A lasts, nine times in ten between the two figures. Nothing is said\n"
        + "unless two tools of each were read.";

    /// <summary>What a plan rests on.</summary>
    public const string PlanBasis =
        "Certainty: the chance that the tools in service and so many new ones last out all the heats.";

    /// <summary>No batch is needed.</summary>
    public const string NothingToForge = "Nothing to forge: the tools in service last out the open orders.";

    /// <summary>What costs rest on.</summary>
    public const string CostBasis =
        "Costs are those noted when tools were added, at the shop's hourly rate; what was not noted is the usual of its\n"
        + "place, and a part that nobody ever noted is left out. Ranges are nine times in ten.";

    /// <summary>An order that is late.</summary>
    /// <param name="late">The order.</param>
    /// <returns>A sentence.</returns>
    public static string Late(LateOrder late) =>
        $"Order {late.Order.Order} cannot be done in time: {late.HeadsLate} of {late.Order.Heads} heads come after {Weekday(late.Order.DueOn)}, "
        + (late.DoneOn is { } last ? $"the last on {Weekday(last)}." : "the last beyond any calendar.");

    /// <summary>Where a capacity comes from.</summary>
    /// <param name="capacity">Heads a day of a pattern.</param>
    /// <returns>A sentence.</returns>
    public static string Capacity(PatternCapacity capacity) =>
        $"{capacity.Pattern}: {Heats(capacity.HeadsADay)} heads a day, "
        + (
            capacity.Sessions > 0
                ? $"the mean of the fuller half of {capacity.Sessions} sessions."
                : "assumed (set heads_a_day), no session of it was closed yet."
        );

    /// <summary>What no plan counts on, and places whose plan was given up.</summary>
    /// <param name="list">The list.</param>
    /// <returns>Sentences.</returns>
    public static IEnumerable<string> NotPlanned(ForgeList list) =>
        list
            .Places.SelectMany(place => place.InService)
            .Where(tool => tool.WhyNot is not null)
            .Select(tool => $"{tool.Forecast.Tool.Mark} is not counted on: {tool.WhyNot}.")
            .Distinct(StringComparer.Ordinal)
            .Concat(
                list.Places.Where(place => place.Needs is NotEnoughData)
                    .Select(place =>
                        $"{place.Demand.Tools} is not planned to the end: {((NotEnoughData)place.Needs).Why}."
                    )
            );

    /// <summary>Which cracks and breaks a plan reckons with, and what it leaves out.</summary>
    /// <param name="list">The list.</param>
    /// <returns>A sentence.</returns>
    public static string CracksPlanned(ForgeList list)
    {
        string[] reckoned =
        [
            .. list
                .Places.Where(place => place.Failures > 0)
                .Select(place => $"{place.Demand.Tools} ({place.Failures} of its sort on record)"),
        ];
        return reckoned.Length == 0
            ? "Wear alone is planned for: a crack or a break on any heat, or a lost tool, is not."
            : $"Cracks and breaks are planned for where the records tell of some: {And(reckoned)}. For the rest wear alone; a lost tool is not planned for.";
    }

    private const int MostNamed = 6;

    /// <summary>Whether heats a head are those of the records or first guesses.</summary>
    /// <param name="list">The list.</param>
    /// <returns>A sentence.</returns>
    public static string HeatsAHeadUsed(ForgeList list)
    {
        string[] guessed =
        [
            .. list.Places.Where(place => !place.Demand.IsLearned).Select(place => place.Demand.Tools.ToString()),
        ];
        return list.Places.IsEmpty ? "No heats are asked for."
            : guessed.Length == 0 ? "Heats a head are those of the shop's records."
            : $"Heats a head are those of the shop's records, but first guesses for {FirstOf(guessed)}.";
    }

    // a line of a screen has room for some names, and a shop may have any number
    private static string FirstOf(string[] names) =>
        And(names.Length <= MostNamed ? names : [.. names.Take(MostNamed - 1), $"{names.Length - MostNamed + 1} more"]);

    private static string BatchWhy(ForgeBatch batch) =>
        $"{batch.Why}{(batch.IsLate ? "; that day is past already" : "")}.";

    private static string StockNotes(ForgeBatch batch) =>
        string.Concat(batch.Stock.Notes.Select(note => $" Stock: {note}."));

    /// <summary>The parts of a cost that nobody ever noted.</summary>
    /// <param name="cost">The cost.</param>
    /// <returns>Their names.</returns>
    public static IEnumerable<string> Unknown(PlaceCost cost) =>
        new[]
        {
            cost.Steel is null ? "steel" : "",
            cost.ForgeHours is null ? "forge hours" : "",
            cost.GrindHours is null ? "grind hours" : "",
            cost.Treatment is null ? "treatment" : "",
        }.Where(part => part.Length > 0);

    /// <summary>Why there is no figure.</summary>
    /// <param name="missing">What is missing.</param>
    /// <returns>A sentence.</returns>
    public static string Missing(NotEnoughData missing) =>
        $"Not enough data: {missing.Why} ({missing.Has} of {missing.Needs}).";

    /// <summary>The curve of sudden failures by its failures alone.</summary>
    /// <param name="fit">The curve.</param>
    /// <returns>A sentence.</returns>
    public static string FailureCurve(WeibullFit fit) =>
        $"By the failures alone: half have failed by {About(fit.HeatsAtFailed(0.5))} heats, one in ten by {About(fit.HeatsAtFailed(0.1))}"
        + (
            fit.Failures < WeibullFit.EnoughFailures
                ? $"; it rests on {fit.Failures} failures, fewer than {WeibullFit.EnoughFailures}, and is too sure of itself."
                : "."
        );

    /// <summary>The curve of sudden failures that begins from what is common.</summary>
    /// <param name="curve">The curve.</param>
    /// <returns>A sentence.</returns>
    public static string FailureCurve(WeibullWithPrior curve) =>
        $"From what is common and these records: half have failed by {About(curve.MedianLife)} heats, one in ten by {About(curve.B10)}.";

    /// <summary>A chance for people.</summary>
    /// <param name="chance">0 to 1.</param>
    /// <returns>For example "96 %", "over 99.9 %".</returns>
    public static string Percent(double chance) =>
        chance > 0.999 ? "over 99.9 %"
        : chance is > 0 and < 0.001 ? "under 0.1 %"
        : (chance * 100).ToString("0.#", CultureInfo.InvariantCulture) + " %";

    /// <summary>A place of a series in words.</summary>
    /// <param name="eye">The eye, null for tools that serve every eye.</param>
    /// <param name="place">The place.</param>
    /// <param name="form">The form.</param>
    /// <returns>For example "H rough drift" or "fuller".</returns>
    public static string SeriesName(string? eye, Place place, string form) =>
        string.Join(
            ' ',
            new[] { eye, place == Place.None ? null : Places.Words.Word(place), form }.Where(word =>
                !string.IsNullOrEmpty(word)
            )
        );
}
