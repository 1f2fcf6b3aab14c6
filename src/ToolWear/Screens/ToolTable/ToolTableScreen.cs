using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.ToolTable;

/// <summary>The table of the tools that are there.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class ToolTableScreen(Host host)
    : SheetScreen(host, [Asked.Mark, Asked.Form, Asked.Eye, Asked.Place, Asked.Steel, Asked.Size, Asked.Scrap])
{
    private const string TableHeading = "The tools I have";

    private readonly List<ToolSheet> rows = [];

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.ToolTable;

    /// <inheritdoc />
    public override string Heading => TableHeading;

    /// <inheritdoc />
    public override void Open()
    {
        rows.Clear();
        Begin(ToolSheet.Empty.With(Asked.Form, "drift"));
    }

    /// <inheritdoc />
    public override void TakenBack(ImmutableArray<Entered> entries)
    {
        if (rows.Count > 0)
        {
            Begin(rows[^1]);
            rows.RemoveAt(rows.Count - 1);
        }
    }

    /// <inheritdoc />
    public override void Compose(Picture body) =>
        ToolTableText.Draw(body, rows, Sheet, $"{Remarks()}\n{Cautions.AddingCautions}".Trim());

    /// <inheritdoc />
    protected override void Entered(ToolSheet entered)
    {
        rows.Add(entered);
        Sitting.Say(Words.ToolEntered(entered[Asked.Mark], rows.Count), Ink.Done);
        Begin(entered.CarriedDown());
    }
}
