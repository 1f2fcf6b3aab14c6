using System.Collections.Immutable;
using ToolWear.Core.Planning.Years;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results.Looks;
using ToolWear.Results.Plans;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Year;

/// <summary>A year looked back on.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class YearScreen(Host host) : Screen(host)
{
    // how many years before the last one
    private int back;
    private int first;
    private int lines;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Year;

    /// <inheritdoc />
    public override string Heading => YearWords.YearHeading(Shown?.Year);

    private ImmutableArray<ShopYear> All =>
        Sitting.Years.IsBehind || Sitting.Years.IsStopped ? [] : Sitting.Years.Latest?.All ?? [];

    private ShopYear? Shown => All.IsEmpty ? null : All[Math.Max(0, All.Length - 1 - back)];

    /// <inheritdoc />
    public override void Open()
    {
        (first, back) = (0, 0);
        Sitting.Years.Want(Sitting.Shop);
    }

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.Years => All.Length > 1,
            Need.MorePages => lines > Room,
            Need.Working => Sitting.Years.IsBehind,
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Year:
                back = Math.Clamp(back + (which == 0 ? 1 : -1), 0, All.Length - 1);
                first = 0;
                break;
            case Act.GoLosses:
                Host.Go(act);
                break;
            case Act.Stop:
                Sitting.Years.Stop();
                break;
            case Act.Back:
                Host.Go(Host.Home);
                break;
            default:
                int step = act == Act.Page ? Room : 1;
                first = Math.Clamp(first + (which == 0 ? -step : step), 0, Math.Max(0, lines - Room));
                break;
        }
    }

    /// <inheritdoc />
    public override void TakenBack(ImmutableArray<Core.Ledger.Entered> entries) => Sitting.Years.Want(Sitting.Shop);

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        if (Shown is { } year)
        {
            lines = YearText.Draw(body, year, first);
        }
        else if (Sitting.Years.IsStopped)
        {
            body.Put(0, 0, PlanWords.WasStopped, Ink.Quiet);
        }
        else
        {
            ProgressBar.Draw(body, Sitting.Years.Share);
        }
    }
}
