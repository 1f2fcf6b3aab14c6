using System.Collections.Immutable;
using ToolWear.Core.Wear.Lifetimes;
using Fit = ToolWear.Results.Column<ToolWear.Core.Wear.Lifetimes.WeibullFit>;
using Life = ToolWear.Results.Column<ToolWear.Results.Looks.Lifetimes>;
using Prior = ToolWear.Results.Column<ToolWear.Core.Wear.Lifetimes.WeibullWithPrior>;
using Row = ToolWear.Results.Column<ToolWear.Core.Wear.Lifetimes.SurvivalStep>;

namespace ToolWear.Results.Looks;

/// <summary>The lives of tools with their steps of survival and what failed suddenly.</summary>
internal sealed record Lifetimes(int Tools, SuddenFailures Sudden, ImmutableArray<SurvivalStep> Steps);

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

    public static Columns<WeibullFit> OfFit { get; } =
    [
        Fit.Number("shape", null, fit => fit.Shape).Means("the shape of the Weibull curve"),
        Fit.Number("scale", null, fit => fit.Scale).Means("the scale of the Weibull curve, in heats"),
        Fit.Number("log_likelihood", null, fit => fit.LogLikelihood)
            .Means("the logarithm of the likelihood at the best Weibull curve"),
    ];

    public static Columns<WeibullWithPrior> OfPrior { get; } =
    [
        Prior
            .Number("mean_shape", null, prior => prior.MeanShape)
            .Means("the mean of the Weibull shape, prior and records together"),
        Prior
            .Number("median_life", null, prior => prior.MedianLife, Quantity.Heats)
            .Means("the heats by which half have failed"),
        Prior
            .Number("b10", null, prior => prior.B10, Quantity.Heats)
            .Means("the heats by which one tool in ten has failed"),
    ];

    /// <summary>All that lifetimes tell, in JSON.</summary>
    public static Columns<Lifetimes> All { get; } =
    [
        Life.Number("tools", null, lives => lives.Tools).Means("tools that a figure rests on"),
        Life.Number("failures", null, lives => lives.Sudden.Failures),
        Life.Part("survival", lives => Columns.Over(lives.Steps)).Means("the steps of the survival curve"),
        Life.Part("weibull", lives => lives.Sudden.Fit is WeibullFit fit ? OfFit.Of(fit) : null)
            .Means("the Weibull curve of the records alone; null where they are too few"),
        Life.Part("weibull_with_prior", lives => OfPrior.Of(lives.Sudden.WithPrior))
            .Means("the Weibull curve of records and prior together"),
    ];
}
