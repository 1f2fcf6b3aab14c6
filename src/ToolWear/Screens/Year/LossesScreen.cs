using System.Collections.Immutable;
using ToolWear.Core.Planning.Years;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results;
using ToolWear.Results.Looks;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Year;

/// <summary>What was lost, and what led to it.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class LossesScreen(Host host) : Screen(host)
{
    private ImmutableArray<Loss> losses = [];

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Losses;

    /// <inheritdoc />
    public override string Heading => YearWords.LossesHeading;

    /// <inheritdoc />
    protected override int Count => losses.Length;

    /// <inheritdoc />
    public override void Open() => losses = Loss.All(Sitting.Shop);

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        if (act == Act.Back)
        {
            Host.Return(ScreenName.Year);
            return;
        }

        base.Do(act, which);
    }

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        Table table = LossTable.Columns.Over(losses);
        int y = body.PutList(0, body.Height - 6, losses.Length, List, width => table.Columns(List, width));
        string led = losses.IsEmpty
            ? "No tool was scrapped yet."
            : $"What led to it: {LossTable.LedTo(losses[List.Chosen].LedTo) ?? "nobody said"}.";
        body.PutWrapped(y + 1, $"{led}\n{YearWords.LossesBasis}", Ink.Quiet);
    }
}
