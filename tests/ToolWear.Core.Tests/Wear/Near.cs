using Xunit;

namespace ToolWear.Core.Tests.Wear;

/// <summary>Closeness in parts of the expected number.</summary>
internal static class Near
{
    internal static void Relative(double expected, double? actual, double tolerance, string what)
    {
        Assert.True(actual is not null, $"{what}: expected {expected:R}, there is none");
        Assert.True(
            Math.Abs(actual.Value - expected) <= tolerance * Math.Abs(expected),
            $"{what}: expected {expected:R}, actual {actual:R}"
        );
    }

    /// <summary>Close in parts of the expected number or absolutely, whichever allows more: for numbers near zero.</summary>
    internal static void Either(double expected, double? actual, double relative, double absolute, string what)
    {
        Assert.True(actual is not null, $"{what}: expected {expected:R}, there is none");
        Assert.True(
            Math.Abs(actual.Value - expected) <= Math.Max(absolute, relative * Math.Abs(expected)),
            $"{what}: expected {expected:R}, actual {actual:R}"
        );
    }
}
