using ToolWear.Core.Sections;
using ToolWear.Core.Tools;

namespace ToolWear.Storage.Csv;

/// <summary>A tool with what other files add to it.</summary>
/// <param name="row">Its row.</param>
/// <param name="tool">The tool as its row says.</param>
internal sealed class ToolRead(CsvRow row, Tool tool)
{
    private readonly List<GaugeMark> gaugeMarks = [.. tool.GaugeMarks];
    private readonly List<Station> stations = [];

    /// <summary>Its row.</summary>
    public CsvRow Row => row;

    /// <summary>The tool as its own row says.</summary>
    public Tool Tool => tool;

    /// <summary>Whether a row that speaks of it is faulty, so that nothing can be said of the rest.</summary>
    public bool IsDoubtful { get; private set; } = row.IsFaulty;

    /// <summary>The tool with its gauge marks and stations.</summary>
    /// <returns>The tool.</returns>
    public Tool Made() => (tool with { GaugeMarks = [.. gaugeMarks], Stations = [.. stations] }).WithOverall();

    /// <summary>Adds a gauge mark.</summary>
    /// <param name="from">The row.</param>
    /// <param name="gauge">The gauge mark.</param>
    public void Add(CsvRow from, GaugeMark gauge)
    {
        if (gaugeMarks.Exists(each => each.Name == gauge.Name))
        {
            from.Fault("gauge", $"{tool.Mark} has a gauge mark {gauge.Name} already; each needs a name of its own");
        }
        else if (!from.IsFaulty && gauge.Refusal() is { } refusal)
        {
            from.Fault("gauge", refusal);
        }

        gaugeMarks.Add(gauge);
        IsDoubtful |= from.IsFaulty;
    }

    /// <summary>Adds a station.</summary>
    /// <param name="from">The row.</param>
    /// <param name="station">The station, null where it could not be read.</param>
    public void Add(CsvRow from, Station? station)
    {
        if (station is not null && stations.Count > 0 && station.FromMark <= stations[^1].FromMark)
        {
            from.Fault(
                "from_mark_mm",
                $"{station.FromMark} follows {stations[^1].FromMark}; stations run from the shank mark outwards"
            );
        }

        if (station is not null)
        {
            stations.Add(station);
        }

        IsDoubtful |= from.IsFaulty;
    }
}
