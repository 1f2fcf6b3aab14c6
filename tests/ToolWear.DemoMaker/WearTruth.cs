using ToolWear.Core.Tools;

namespace ToolWear.DemoMaker;

/// <summary>How one gauge mark truly wears; invented, nobody in the shop knows it.</summary>
/// <param name="Rate">mm for each weighted heat of an orange fire, after running-in.</param>
/// <param name="RunningIn">mm that go in the first three heats besides.</param>
/// <param name="Swell">mm by which it grows first instead, over some six heats; for the long way of a drift.</param>
/// <param name="Uneven">How much a session's wear scatters, as a share of it.</param>
/// <param name="ReadSd">How well a worn surface repeats under the caliper, mm.</param>
/// <param name="FeelsFire">Whether a hotter fire wears it faster.</param>
internal sealed record WearTruth(
    double Rate,
    double RunningIn,
    double Swell,
    double Uneven,
    double ReadSd,
    bool FeelsFire
)
{
    /// <summary>Heats in which running-in is over.</summary>
    private const double RunningInHeats = 3;

    /// <summary>Heats in which the first swelling is two thirds done.</summary>
    private const double SwellHeats = 6;

    /// <summary>No wear at all: the length over all changes by grinding only.</summary>
    public static WearTruth None { get; } = new(0, 0, 0, 0, 0.1, false);

    /// <summary>The wear of some heats.</summary>
    /// <param name="before">Weighted heats that the tool had done.</param>
    /// <param name="heats">Weighted heats now.</param>
    /// <param name="fire">How hot the work was.</param>
    /// <param name="chance">The tool's own chance.</param>
    /// <returns>mm, below zero while the tool swells.</returns>
    public double Of(double before, double heats, Fire fire, Chance chance)
    {
        double steady = Rate * heats * (FeelsFire ? Severity(fire) : 1) * Math.Max(0.2, 1 + chance.About(Uneven));
        double after = before + heats;
        double runningIn = RunningIn * (Math.Min(1, after / RunningInHeats) - Math.Min(1, before / RunningInHeats));
        double swell = Swell * (Math.Exp(-before / SwellHeats) - Math.Exp(-after / SwellHeats));
        return steady + runningIn - swell;
    }

    /// <summary>Yellow, orange, red went as 0.026, 0.018, 0.014 mm a heat for 4140, as 0.060, 0.045, 0.035 for mild.</summary>
    private static double Severity(Fire fire) =>
        fire switch
        {
            Fire.Yellow => 1.35,
            Fire.Red => 0.78,
            _ => 1,
        };

    /// <summary>The truth of a gauge mark of a tool.</summary>
    public static WearTruth Of(Tool tool, GaugeMark gauge, double trueLife, Chance chance) =>
        (tool.Form.Name, gauge.Measures) switch
        {
            (_, Measures.Overall) => None,
            ("drift", Measures.Width) => Thickness(tool, trueLife, chance),
            ("drift", _) => LongWay(Thickness(tool, trueLife, chance), tool.Place, chance),
            ("slitter" or "slot punch", _) => new(0.01, 0, 0, 0.1, 0.03, false),
            ("fuller", _) => new(0.010, 0, 0, 0.15, 0.05, false),
            ("hot cut", _) => new(0.04, 0, 0, 0.2, 0.1, false),
            ("flatter", _) => new(0.004, 0, 0, 0.2, 0.06, false),
            ("die", _) => new(0.0018, 0, 0, 0.2, 0.05, false),
            _ => new(0.003, 0, 0, 0.2, 0.05, false),
        };

    /// <summary>The thickness goes so fast that the allowed loss is reached at the tool's true life.</summary>
    private static WearTruth Thickness(Tool tool, double trueLife, Chance chance)
    {
        double runningIn = tool.Place switch
        {
            Place.Rough => Math.Clamp(0.15 + chance.About(0.03), 0.10, 0.20),
            Place.Second => 0.06,
            Place.Opener => 0.10,
            _ => 0.012,
        };
        double readSd = tool.Place switch
        {
            Place.Finish => 0.012,
            Place.Second => 0.04,
            _ => 0.06,
        };
        bool isRough = tool.Place == Place.Rough;
        double rate = ((double)Drifts.Allowed(tool.Place) - runningIn) / trueLife;
        return new(rate, runningIn, 0, isRough ? 0.08 : 0.12, readSd, isRough);
    }

    /// <summary>The long way goes six tenths as fast, and blows on the cheeks swell it first.</summary>
    private static WearTruth LongWay(WearTruth thickness, Place place, Chance chance) =>
        thickness with
        {
            Rate = 0.6 * thickness.Rate,
            RunningIn = 0,
            Swell = place == Place.Rough ? Math.Clamp(0.10 + chance.About(0.03), 0.05, 0.15) : 0,
        };
}
