using ToolWear.Core.Wear.Lifetimes;
using Row = ToolWear.Results.Column<ToolWear.Core.Wear.Lifetimes.SurvivalStep>;

namespace ToolWear.Results.Looks;

/// <summary>How many tools had not failed suddenly by so many heats.</summary>
internal static class LifetimeTable
{
    private static readonly Quantity Share = Quantity.Of("0 to 1", "F3");

    public static Columns<SurvivalStep> Columns { get; } =
    [
        Row.Number("heats", "Heats", step => step.Heats, Quantity.Worked),
        Row.Number("at_risk", "Watched", step => step.AtRisk).Means("tools that still stood just before so many heats"),
        Row.Number("failed", "Failed", step => step.Failed)
            .Means("1 where the tool cracked or broke, 0 where it did not; tools that failed at so many heats"),
        Row.Number("surviving", "Share left", step => step.Surviving, Share)
            .Means("the share that has not failed by so many heats"),
        Row.Number("se", null, step => step.Se, Share).Means("the standard error of the share that survives"),
        Row.Number("lo95", "from", step => step.Low95, Share).Means("nineteen times in twenty at least so much"),
        Row.Number("hi95", "to", step => step.High95, Share).Means("nineteen times in twenty at most so much"),
    ];
}
