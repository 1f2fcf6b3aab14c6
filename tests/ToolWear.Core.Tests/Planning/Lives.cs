using ToolWear.Core.Measure;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Lives;
using Xunit;

namespace ToolWear.Core.Tests.Planning;

/// <summary>Lives of the tests.</summary>
internal static class Lives
{
    internal static WeibullLife Weibull(double shape, double scale)
    {
        Assert.True(WeibullLife.TryMake(shape, scale, out WeibullLife? life, out string? refusal), refusal);
        return life;
    }

    internal static LogNormalLife LogNormal(double median, double sdLog, WeibullLife? cracks = null)
    {
        Assert.True(
            LogNormalLife.TryMake(median, sdLog, cracks, out LogNormalLife? life, out string? refusal),
            refusal
        );
        return life;
    }

    internal static Func<double, double> Used(this Life life, double used) => k => life.ChanceUsedUpWithin(used, k);

    internal static Replacements Needs(Estimated estimated) => Assert.IsType<Replacements>(estimated);
}
