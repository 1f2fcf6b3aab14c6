using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.DemoMaker;

/// <summary>A tool of the invented shop as it truly is: what the caliper then reads is not quite that.</summary>
internal sealed class TrueTool
{
    private readonly Chance chance;
    private readonly Dictionary<string, (WearTruth Truth, double Wear)> gauges = [];
    private double heats;

    /// <summary>Makes a tool as it was entered.</summary>
    /// <param name="tool">The tool.</param>
    public TrueTool(Tool tool)
    {
        Tool = tool;
        chance = Chance.Of(tool.Mark.Text);
        foreach (GaugeMark gauge in tool.GaugeMarks)
        {
            gauges[gauge.Name] = (WearTruth.Of(tool, gauge, TrueLives.Of(tool), chance), 0);
        }

        // running-in is long over on a tool that was in use
        heats = tool.Start.As == StartedAs.InUse ? tool.Start.HeatsBefore?.Count ?? 40 : 0;
        foreach ((string gauge, double wear) in TrueLives.WearBefore(tool.Mark.Text))
        {
            gauges[gauge] = (gauges[gauge].Truth, wear);
        }
    }

    /// <summary>The tool as it was entered.</summary>
    public Tool Tool { get; }

    /// <summary>Sessions it has worked since it was read last.</summary>
    public int Unread { get; set; }

    /// <summary>Wears the tool.</summary>
    public void Work(double weighted, Fire fire)
    {
        foreach ((string name, (WearTruth truth, double wear)) in gauges.ToArray())
        {
            gauges[name] = (truth, wear + truth.Of(heats, weighted, fire, chance));
        }

        heats += weighted;
    }

    /// <summary>The true size at a gauge mark, mm.</summary>
    public double Size(string gauge)
    {
        GaugeMark mark = Tool.Gauge(gauge)!;
        double wear = gauges[gauge].Wear;
        return mark.Start!.Value.Mm + (mark.Wears == Wears.Smaller ? -wear : wear);
    }

    /// <summary>What the caliper reads, a whole number of its steps.</summary>
    /// <param name="gauge">The gauge mark.</param>
    /// <param name="slipMm">What a slip of the jaw adds.</param>
    /// <param name="isGround">Whether the place was ground or brushed bright, where it repeats three times as well.</param>
    public Length Read(string gauge, double slipMm = 0, bool isGround = false)
    {
        decimal step = (decimal)(Tool.Gauge(gauge)!.Resolution?.Mm ?? 0.05);
        double size = Size(gauge) + slipMm + chance.About(gauges[gauge].Truth.ReadSd / (isGround ? 3 : 1));
        return Length.FromMm(decimal.Round((decimal)size / step) * step);
    }

    /// <summary>Changes the true size at a gauge mark by rework.</summary>
    /// <param name="gauge">The gauge mark.</param>
    /// <param name="byMm">What it gains, below zero for what it loses.</param>
    public void Rework(string gauge, double byMm)
    {
        (WearTruth truth, double wear) = gauges[gauge];
        gauges[gauge] = (truth, wear + (Tool.Gauge(gauge)!.Wears == Wears.Smaller ? -byMm : byMm));
    }
}
