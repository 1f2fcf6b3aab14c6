using System.Runtime.CompilerServices;

namespace ToolWear.Core.Wear.Figures;

/// <summary>Doors that let only real numbers through, so that no fit has to look for NaN.</summary>
internal static class Finite
{
    internal static double Number(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, value, "must be a finite number");

    internal static double NotNegative(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        Number(value, name) >= 0 ? value : throw new ArgumentOutOfRangeException(name, value, "must not be negative");

    internal static double Positive(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        Number(value, name) > 0 ? value : throw new ArgumentOutOfRangeException(name, value, "must be above zero");

    internal static double? NumberIfKnown(double? value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        value is { } known ? Number(known, name) : null;

    internal static double? PositiveIfKnown(
        double? value,
        [CallerArgumentExpression(nameof(value))] string name = ""
    ) => value is { } known ? Positive(known, name) : null;
}
