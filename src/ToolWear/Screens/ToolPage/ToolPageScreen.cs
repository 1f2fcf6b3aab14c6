using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.ToolPage;

/// <summary>Everything that can be done to one tool.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class ToolPageScreen(Host host) : GuidedScreen(host)
{
    private const int DeedColumns = 14;

    private ScreenName from;
    private (Shop Shop, ShopForecasts? Forecasts, long Tool, ImmutableArray<ToolDeed> Deeds)? known;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.ToolPage;

    /// <inheritdoc />
    protected override string ListHeading => DoTo(Tool?.Mark.Text);

    /// <inheritdoc />
    protected override int Count => Deeds.Length;

    private ToolInShop? Tool =>
        Host.ToolInHand is { } id && Sitting.Shop.Tools.GetValueOrDefault(id) is { State: not ToolState.Scrapped } tool
            ? tool
            : null;

    private ImmutableArray<ToolDeed> Deeds
    {
        get
        {
            if (Tool is not { } tool)
            {
                return [];
            }

            if (
                known is not { } last
                || !ReferenceEquals(last.Shop, Sitting.Shop)
                || !ReferenceEquals(last.Forecasts, Sitting.Forecasts)
                || last.Tool != tool.Id
            )
            {
                known = (Sitting.Shop, Sitting.Forecasts, tool.Id, ToolDeeds.Of(Sitting, tool));
            }

            return known.Value.Deeds;
        }
    }

    /// <inheritdoc />
    public override void Open()
    {
        base.Open();
        List.Choose(0, Deeds.Length);
        from = Host.Before?.Name is ScreenName.WearCard or ScreenName.StockTake ? Host.Before.Name : Host.Home;
    }

    /// <inheritdoc />
    protected override void DoInList(Act act, int which)
    {
        switch (act)
        {
            case Act.Enter:
                Begin(Deeds[List.Chosen].Begin());
                break;
            case Act.Back:
                Host.Return(from);
                break;
            default:
                base.DoInList(act, which);
                break;
        }
    }

    /// <inheritdoc />
    protected override void ComposeList(Picture body)
    {
        ImmutableArray<ToolDeed> deeds = Deeds;
        body.PutList(
            0,
            body.Height,
            deeds.Length,
            List,
            width =>
                [
                    new("", 1, row => deeds[row].IsWanted ? ">" : "", _ => Ink.Warn),
                    new("", DeedColumns, row => deeds[row].Words, _ => Ink.Strong),
                    new(
                        "",
                        Math.Max(0, width - DeedColumns - 5),
                        row => deeds[row].Does,
                        row => deeds[row].IsWanted ? Ink.Warn : Ink.Quiet
                    ),
                ]
        );
    }

    /// <inheritdoc />
    protected override void Entered(GuidedEntry entered)
    {
        List.Choose(0, Deeds.Length);
        if (Tool is null)
        {
            string said = Sitting.Said.Sentence;
            Host.Go(Host.Home);
            Sitting.Say(said, Ink.Done);
        }
    }

    private static string DoTo(string? mark) => $"{mark}: what do you do to it?";
}
