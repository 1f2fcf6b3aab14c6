using System.Globalization;
using ToolWear.Core.Measure;
using ToolWear.Core.Planning;

namespace ToolWear;

/// <content>What is said of the forge list.</content>
public static partial class Words
{
    internal const string CutListRow = "Cut list, and what to buy";
    internal const string MindRow = "What to mind";
    internal const string SureAsked = "How sure";
    internal const string OrderToGrow = "Order";
    internal const string HeadsMore = "Heads more";
    internal const string ToolLost = "Tool lost";
    internal const string SureMeaning = "A share above 0 and below 1: 0.95 is nineteen times in twenty.";
    internal const string OrderToGrowMeaning = "Which order grows: the first letters do, or the arrows.";
    internal const string HeadsMoreMeaning = "How many heads it would have more.";
    internal const string ToolLostMeaning = "Which tool would be lost: the first letters do, or the arrows.";
    internal const string SupposedOnly = "Only supposed: nothing is recorded. Esc goes back to the plan as it is.";
    internal const string AsItIs = "As it is";
    internal const string WasStopped =
        "It was stopped before it was done. Esc goes back; to begin again come once more.";
    internal const string ChooseATool = "Choose a tool below the heads: a head is not re-forged.";
    internal const string NothingToCutNow = "Nothing to cut.";
    internal const string NothingToForgeNow =
        $"{NothingToForge} Heats are asked for by orders: o on the tool rack enters one.";

    internal const string AboutForgeList =
        "What to forge for the open orders: how many, by when, why, from which bar, and what would change with one fewer, another certainty, more heads or a tool lost. The last two rows are the cut list and what else to mind.";

    internal static string PercentDone(double share) =>
        (share * 100).ToString("0", CultureInfo.InvariantCulture) + " %";

    internal static string PlannedSure(double sure) =>
        $"Planned to last {Percent(sure)} of the time ({sure.ToString("0.###", CultureInfo.InvariantCulture)}).";

    internal static string IfSure(double sure) => $"{sure.ToString("0.###", CultureInfo.InvariantCulture)} sure";

    internal static string IfHeads(string order, int more) => $"{more} heads more of {order}";

    internal static string IfLost(string tool) => $"{tool} lost";

    internal static string IfAll(IEnumerable<string> supposed) => "If " + string.Join(", ", supposed);

    internal static string NoSure(string text) => $"\"{text}\": a share above 0 and below 1, such as 0.95";

    internal static string NoHeadsMore(string text) => $"\"{text}\": a whole number from 1 to 10000";

    internal static string NotInService(string text) => $"\"{text}\": a tool in service is wanted";

    internal static string NotAnOpenOrder(string text) => $"\"{text}\": an open order is wanted";

    internal static string BatchSizes(ForgeBatch batch, LengthUnit units, string by = "x")
    {
        if (batch.Series is not { Length: { } length } series)
        {
            return "-";
        }

        return SizeShown.Eye(length, units) + (series.Width is { } width ? by + SizeShown.Eye(width, units) : "");
    }

    internal static string BatchDetails(ForgeBatch batch, LengthUnit units)
    {
        string cuts = CutsOf(batch.Stock, units);
        string buy = BuyOf(batch.Stock, units) is { } bars ? $"Buy {bars}. " : "";
        string cost = batch.TotalCost is { } total ? $"Cost about {total:0}. " : "";
        string hours = batch.Hours is { } known ? $"{Heats((double)known)} hours. " : "";
        return $"{batch.Number} {batch.Tools}: {BatchWhy(batch)}\n"
            + (cuts.Length > 0 ? $"From {cuts}. " : "")
            + buy
            + hours
            + cost
            + $"Certainty {Percent(batch.Sure)}, with one fewer {Percent(batch.SureWithOneFewer)}."
            + StockNotes(batch);
    }

    internal static string OneFewer(ForgeBatch batch)
    {
        string saved = batch.Cost.Total is { } cost ? $", {cost:0} saved" : "";
        string hours = batch.Cost.Hours is { } known ? $", {Heats((double)known)} hours less" : "";
        return $"With {batch.Number - 1} instead of {batch.Number} {batch.Tools}: certainty {Percent(batch.SureWithOneFewer)} instead of {Percent(batch.Sure)}{saved}{hours}. If it fails, order {batch.Needed.Order} stops on {Weekday(batch.ReadyBy)} or after.";
    }

    internal static string SideOf(PlaceSide side) =>
        side.Number == 0 ? "none" : string.Join(", ", side.Days.Select(day => $"{day.Number} by {day.ForgeBy:MM-dd}"));

    internal static string SideTotal(ForgeList list)
    {
        decimal cost = list.Batches.Sum(batch => batch.TotalCost ?? 0);
        decimal hours = list.Batches.Sum(batch => batch.Hours ?? 0);
        return $"{list.Batches.Sum(batch => batch.Number)} tools, {Heats((double)hours)} h, {cost:0}";
    }

    internal static string SideLate(ForgeList list) =>
        list.Calendar.Late.IsEmpty
            ? "all orders in time"
            : "late: " + string.Join(", ", list.Calendar.Late.Select(late => late.Order.Order));
}
