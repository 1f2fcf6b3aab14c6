using System.Globalization;
using System.Runtime.InteropServices;
using ToolWear.Core.Measure;

namespace ToolWear.Core.Sections;

/// <summary>How much room one section leaves all round another that lies in it as well as it can.</summary>
/// <param name="ClearanceMm">The least room; below zero the inner section stands out by as much.</param>
/// <param name="ShiftMm">How far along x the inner section lies from mid-length to mid-length, towards the nose.</param>
/// <param name="LeastAt">Where the room is least. It is often least at nose and back alike: then it says nose.</param>
/// <param name="EndsAlike">True where both sections have two like ends, so that nose and back are one.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Clearance(double ClearanceMm, double ShiftMm, NearestAt LeastAt, bool EndsAlike)
{
    // a tenth of a nanometre: nearer than that, rounding decides
    private const double TouchingMm = 1e-7;

    /// <summary>Whether the inner section lies wholly inside, touching allowed.</summary>
    public bool Holds => ClearanceMm >= -TouchingMm;

    /// <summary>The clearance as the smith says it: "inside by 0.4, least at the nose", "bursts the nose by 3.1".</summary>
    /// <param name="unit">The unit for people.</param>
    /// <returns>Words without a full stop, the size in mm to 0.1 (to 0.01 below 0.1), in inches to 0.001.</returns>
    public string ToWords(LengthUnit unit = LengthUnit.Mm)
    {
        string where =
            LeastAt == NearestAt.Cheek ? "cheek"
            : EndsAlike ? "ends"
            : LeastAt == NearestAt.Nose ? "nose"
            : "back";
        double size = Math.Abs(ClearanceMm);
        string figure =
            unit == LengthUnit.Inch
                ? SizeShown.Wear(size, unit)
                : size.ToString(size < 0.095 ? "0.00" : "0.0", CultureInfo.InvariantCulture);
        return Holds ? $"inside by {figure}, least at the {where}" : $"bursts the {where} by {figure}";
    }
}
