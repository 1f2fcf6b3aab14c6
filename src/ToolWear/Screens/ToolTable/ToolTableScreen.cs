using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Keys;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.ToolTable;

/// <summary>Tools are added: one by itself, or row by row in the table of the tools one has.</summary>
/// <param name="host">Where it is shown.</param>
/// <param name="isTable">Whether it is the table.</param>
internal sealed class ToolTableScreen(Host host, bool isTable) : GuidedScreen(host)
{
    private readonly List<ToolSheet> rows = [];

    /// <inheritdoc />
    public override ScreenName Name => isTable ? ScreenName.ToolTable : ScreenName.NewTool;

    /// <inheritdoc />
    protected override string ListHeading => "";

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) => isTable && row.Act == Act.Back ? row.Words : base.WordsOf(row);

    /// <inheritdoc />
    public override void Open()
    {
        rows.Clear();
        Begin(new ToolSheet(Sitting, isTable ? rows : null));
    }

    /// <inheritdoc />
    public override void TakenBack(ImmutableArray<Entered> entries)
    {
        if (rows.Count > 0)
        {
            ToolSheet last = rows[^1];
            rows.RemoveAt(rows.Count - 1);
            Begin(new ToolSheet(Sitting, rows, last));
        }
    }

    /// <inheritdoc />
    protected override void ComposeList(Picture body) { }

    /// <inheritdoc />
    protected override void Cancelled() => Host.Go(Host.Home);

    /// <inheritdoc />
    protected override void Entered(GuidedEntry entered)
    {
        if (isTable)
        {
            rows.Add((ToolSheet)entered);
            Begin(new ToolSheet(Sitting, rows));
        }
        else
        {
            Host.Go(Host.Home);
        }
    }
}
