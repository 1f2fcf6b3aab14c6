using System.Collections.Immutable;
using ToolWear.Commands.Calls;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Lives;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Plans;
using ToolWear.Wording;

namespace ToolWear.Commands.Plans;

/// <summary>plan from the store: how many new tools each place takes for the open orders.</summary>
internal static class PlanOfStore
{
    internal const string PlanBasis =
        "Certainty: the chance that the tools in service and so many new ones last out all the heats.";

    /// <summary>Makes the forge list of a shop.</summary>
    public static ForgeList List(Call call, Shop shop, double? sure, DateOnly? until) =>
        ForgeList.Of(new ShopLives(ShopForecasts.Of(shop)), call.On, sure ?? shop.Settings.Sure, until);

    /// <summary>Prints the plan of a store.</summary>
    public static void Print(Call call, double? sure)
    {
        ForgeList list = List(call, call.Shop, sure, until: null);
        string heading = Words.ShopHeading(call.Shop, call.Units);
        call.Print(
            call.Format switch
            {
                "json" => Json(list.Places),
                "csv" => Rows(list).ToCsv(call.HasSemicolons),
                _ => heading
                    + call.Text(Rows(list))
                    + $"\n{HeatsAHeadHeading}\n\n{call.Text(PatternTable.HeatsAHead.Over(OrderBook.Of(call.Shop, call.On).Stages.Values.SelectMany(each => each)))}"
                    + Below(list),
            }
        );
    }

    /// <summary>What follows a plan for people: late orders, how much is learned, cautions.</summary>
    private static string Below(ForgeList list) =>
        "\n"
        + string.Concat(Notes(list).Select(sentence => sentence + "\n"))
        + $"{PlanBasis}\n{PlanWords.CracksPlanned(list)}\n{Cautions.ForecastCaution}\n";

    /// <summary>What has to be said of one plan: late orders, how much is learned, what is not planned.</summary>
    private static IEnumerable<string> Notes(ForgeList list) =>
        [
            .. list.Calendar.Late.Select(PlanWords.Late),
            .. list.WaysOut.Select(PlanWords.Sooner),
            .. list.Calendar.Capacities.Select(PlanWords.Capacity),
            .. PlanWords.NotPlanned(list),
            PlanWords.HeatsAHeadUsed(list),
        ];

    private static string Json(ImmutableArray<PlacePlan> places) =>
        JsonPen.Of(json =>
        {
            json.WriteStartArray();
            foreach (PlacePlan place in places)
            {
                json.WriteStartObject();
                json.WriteString("eye", place.Demand.Tools.Eye);
                json.WriteString("place", PlaceWord(place.Demand.Tools));
                json.WriteString("form", place.Demand.Tools.Form);
                if (place.Needs is Replacements needs)
                {
                    PlanFigures.Write(json, needs);
                }
                else
                {
                    json.WriteNumber("demand_heats", Math.Ceiling(place.Demand.Heats));
                    json.WriteNull("sure");
                    json.WriteNull("cover");
                    json.WriteNull("needed");
                    json.WriteNull("expected");
                }

                json.WriteEndObject();
            }

            json.WriteEndArray();
        });

    private static Table Rows(ForgeList list) =>
        PlanTable.Columns.Over(list.Places.Select(place => new PlanRow(place, list.Sure)));

    private static string? PlaceWord(ToolPlace tools) =>
        tools.Place == Place.None ? null : Places.Words.Word(tools.Place);

    private const string HeatsAHeadHeading =
        "Heats a head at each stage, as worked; weighted as they count on the tool. Records count from two sessions on.";
}
