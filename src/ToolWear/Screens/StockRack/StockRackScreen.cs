using System.Collections.Immutable;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.StockRack;

/// <summary>The bars that tools are forged from.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class StockRackScreen(Host host) : GuidedScreen(host)
{
    private const string BarsHeading = "Stock rack";

    private (Shop Shop, ImmutableArray<BarCuts> Bars)? known;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.StockRack;

    /// <inheritdoc />
    protected override string ListHeading => BarsHeading;

    /// <inheritdoc />
    protected override int Count => Bars.Length;

    private ImmutableArray<BarCuts> Bars
    {
        get
        {
            if (known is not { } last || !ReferenceEquals(last.Shop, Sitting.Shop))
            {
                Shop shop = Sitting.Shop;
                known = (shop, [.. shop.Bars.Values.Select(bar => BarCuts.Of(shop, bar))]);
            }

            return known.Value.Bars;
        }
    }

    /// <inheritdoc />
    protected override void DoInList(Act act, int which)
    {
        switch (act)
        {
            case Act.Add:
                Begin(new BarSheet(Sitting, null));
                break;
            case Act.Enter:
                Begin(new BarSheet(Sitting, Bars[Math.Min(List.Chosen, Bars.Length - 1)].Bar));
                break;
            default:
                base.DoInList(act, which);
                break;
        }
    }

    /// <inheritdoc />
    protected override void ComposeList(Picture body) => StockRackText.Draw(body, Bars, List, Sitting.Units);

    /// <inheritdoc />
    protected override void Entered(GuidedEntry entered)
    {
        string bar = ((BarSheet)entered).Made!.Bar;
        List.Choose(Bars.ToList().FindIndex(each => each.Bar.Bar == bar), Bars.Length);
    }
}
