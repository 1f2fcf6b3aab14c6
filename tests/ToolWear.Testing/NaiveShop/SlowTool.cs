using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Testing.NaiveShop;

/// <summary>A tool of the slow shop: plain, mutable, thrown away after each question.</summary>
internal sealed class SlowTool(long id, Tool tool)
{
    public long Id { get; } = id;

    public Tool Tool { get; set; } = tool;

    public ToolMark Mark { get; set; } = tool.Mark;

    public ToolState State { get; set; } = ToolState.InService;

    public DateOnly StateOn { get; set; } = DateOnly.MinValue;

    /// <summary>How many tools were scrapped before it.</summary>
    public int ScrapRank { get; set; }

    public bool StartUnknown { get; set; }

    public bool IsLent { get; set; }

    public List<Entered> Events { get; } = [];

    public bool HasGauge(string name) =>
        Tool.GaugeMarks.Any(gauge => gauge.Name == name)
        || (
            name == "overall"
            && Tool.Form.IsStruck
            && Tool.GaugeMarks.All(gauge => gauge.Measures is not Measures.Overall)
        );

    /// <summary>Nothing that was measured so far counts any more.</summary>
    public void ForgetSizes()
    {
        Events.RemoveAll(each => each.What is ToolMeasured);
        for (int i = 0; i < Events.Count; i++)
        {
            if (Events[i].What is ToolReworked e)
            {
                ToolReworked bare = new(e.Tool, e.On, e.What, null, null, null, e.Hours, e.Cost, e.Note);
                Events[i] = Events[i] with { What = bare };
            }
        }
    }
}
