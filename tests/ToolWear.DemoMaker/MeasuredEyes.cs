using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using static ToolWear.DemoMaker.Written;

namespace ToolWear.DemoMaker;

/// <summary>Finished, cold eyes that somebody put a caliper into.</summary>
internal static class MeasuredEyes
{
    /// <summary>
    /// A cold drift measures so much more than the cold eye that it makes, knocked out at 250 degrees from an eye at
    /// 750: (1 + e(750)) / (1 + e(250)) with the elongation e of carbon steel of EN 1993-1-2, 3.4.1.1.
    /// </summary>
    private const double DriftOverEye = 1.0080;

    /// <summary>How much finished eyes scatter, mm.</summary>
    private const double ScatterMm = 0.05;

    /// <summary>Measures the eyes of a session.</summary>
    public static void After(Diary diary, DaysWork session, DateOnly day)
    {
        (string Drift, EyeWhere Where, HandleFits? Fits)[] measured = session.Name switch
        {
            "hatchets 2" or "hatchets 5" or "hatchets 7" or "hatchets 9" => [("HF1", EyeWhere.Top, HandleFits.Yes)],
            "hatchets 10" => [("HF1", EyeWhere.Top, HandleFits.Yes), ("HF1", EyeWhere.Bottom, null)],
            "tomahawks 2" or "tomahawks 5" => [("TF1", EyeWhere.Top, HandleFits.Yes)],
            "tomahawks 7" => [("TF1", EyeWhere.Top, HandleFits.Tight)],
            "hammers 3" or "hammers 7" => [("XF1", EyeWhere.Top, HandleFits.Yes)],
            "adzes 5" => [("AF1", EyeWhere.Top, HandleFits.Yes)],
            _ => [],
        };
        Chance chance = Chance.Of("eyes of " + session.Name);
        foreach ((string drift, EyeWhere where, HandleFits? fits) in measured)
        {
            TrueTool tool = diary[drift];
            diary.Write(
                day,
                new EyeMeasured(
                    tool.Tool.Eye!,
                    day,
                    session.Name,
                    Mark(drift),
                    where,
                    Eye(tool.Size("length"), chance),
                    Eye(tool.Size("width"), chance),
                    fits
                )
            );
        }
    }

    private static Length Eye(double driftMm, Chance chance)
    {
        double mm = (driftMm / DriftOverEye) + chance.About(ScatterMm);
        return Mm(decimal.Round((decimal)mm / 0.05m) * 0.05m);
    }
}
