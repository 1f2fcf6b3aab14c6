using System.Collections.Immutable;

namespace ToolWear.Core.Wear.Sisters;

/// <summary>The curves among which the readings of a kind decide; a new one is one line here.</summary>
internal static class WearCurves
{
    internal static ImmutableArray<WearCurve> All { get; } =
    [
        new PowerCurve(0.36),
        new PowerCurve(0.46),
        new PowerCurve(0.60),
        new PowerCurve(0.77),
        new PowerCurve(1),
        new PowerCurve(1.25),
        new PowerCurve(1.56),
        new PowerCurve(1.95),
        new PowerCurve(2.4),
    ];
}
