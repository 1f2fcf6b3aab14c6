using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Lives;
using Cover = ToolWear.Results.Column<(int New, double Certainty)>;
using Row = ToolWear.Results.Column<ToolWear.Results.Plans.PlanRow>;

namespace ToolWear.Results.Plans;

/// <summary>How many new tools a place takes to be so sure.</summary>
internal sealed record PlanRow(PlacePlan Plan, double Sure)
{
    public Replacements? Needs => Plan.Needs as Replacements;
}

/// <summary>How many new tools each place takes for the open orders.</summary>
internal static class PlanTable
{
    public static Columns<PlanRow> Columns { get; } =
    [
        Row.Text("eye", "Eye", row => row.Plan.Demand.Tools.Eye),
        Row.Place("Place", row => row.Plan.Demand.Tools.Place),
        Row.Text("form", "Form", row => row.Plan.Demand.Tools.Form),
        Row.Number("in_service", "In service", row => row.Plan.InService.Count(tool => tool.WhyNot is null))
            .Means("tools of that place in service that are counted on"),
        Row.Number("demand_heats", "Heats", row => Math.Ceiling(row.Plan.Demand.Heats - 1e-9), Quantity.Worked)
            .Means("weighted heats that the open orders ask of a place"),
        Row.Text("learned", "Heats a head", row => row.Plan.Demand.IsLearned ? "from records" : "first guess")
            .Means("where the heats a head come from: from records, first guess"),
        Row.Number("sure", null, row => row.Sure, Quantity.Sure),
        Row.Number("sure_without", "With none", row => row.Needs?.Cover[0], Quantity.Sure)
            .Means("the certainty with no new tool"),
        Row.Number("needed", "New", row => row.Needs?.Needed)
            .Means("the least number of new tools that is sure enough"),
        Row.Number("expected", "Expected", row => row.Needs?.Expected)
            .Means("how many new tools are needed on the average"),
        Row.Number("sure_with_one_fewer", "One fewer", row => row.Needs?.SureWithOneFewer, Quantity.Sure),
    ];

    /// <summary>The certainty by number of new tools, none first.</summary>
    public static Columns<(int New, double Certainty)> Covers { get; } =
    [
        Cover.Number("new_tools", "New", row => row.New).Means("how many new tools"),
        Cover
            .Number("cover", "Certainty", row => row.Certainty, Quantity.Sure)
            .Means("the certainty, by the number of new tools, none first"),
    ];
}
