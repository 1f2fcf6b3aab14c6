using ToolWear.Core.Tools;

namespace ToolWear.DemoMaker;

/// <summary>The true lives of the drifts in weighted heats at an orange fire, and what had gone before. All invented.</summary>
internal static class TrueLives
{
    /// <summary>How many heats take a drift to its allowed loss of thickness.</summary>
    /// <remarks>
    /// About 27 heats for a mild rough (0.045 mm a heat), 65 for 4140 normalised (0.018), 90 for a second (0.008), 290
    /// for a hardened finish drift that only sizes (0.0012), 110 for a mild opener: a fifth to a quarter of cheek work.
    /// </remarks>
    public static double Of(Tool tool) =>
        tool.Mark.Text switch
        {
            "H1" => 26,
            "H2" => 25,
            "H3" => 19,
            "H4" => 58,
            "H5" => 60,
            "H6" => 60,
            "T1" => 65,
            "T2" => 60,
            "T3" => 72,
            "X1" => 55,
            "X2" => 66,
            "X3" => 70,
            "A1" => 62,
            "A2" => 68,
            "A2ND" => 87,
            _ => tool.Place switch
            {
                Place.Opener => 110,
                Place.Rough => 65,
                Place.Second => 92,
                _ => 290,
            },
        };

    /// <summary>Wear that a tool in use had behind it when the records began, mm by gauge mark.</summary>
    public static IEnumerable<(string Gauge, double Wear)> WearBefore(string mark) =>
        mark switch
        {
            "A2ND" => [("width", 0.50), ("length", 0.62), ("overall", 4)],
            "X2ND" => [("width", 0.27), ("length", 0.20), ("overall", 6)],
            "FU1" => [("flat", 1.20), ("overall", 1.0)],
            _ => [],
        };
}
