using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.ForgeList;

/// <summary>What has to be forged for the open orders.</summary>
/// <param name="host">Where it is shown.</param>
public sealed class ForgeListScreen(Host host) : Screen(host)
{
    private int first;
    private int lines;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.ForgeList;

    /// <inheritdoc />
    public override string Heading => Words.ForgeHeading;

    /// <inheritdoc />
    public override void Open()
    {
        first = 0;
        Sitting.Plans.Want(Sitting.Shop);
    }

    /// <inheritdoc />
    public override bool Has(Need need) => need == Need.MorePages ? lines > Room : base.Has(need);

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        if (act == Act.Back)
        {
            Host.Go(Host.Home);
            return;
        }

        int step = act == Act.Page ? Room : 1;
        first = Math.Clamp(first + (which == 0 ? -step : step), 0, Math.Max(0, lines - Room));
    }

    /// <inheritdoc />
    public override void Compose(Picture body) =>
        lines = ForgeListText.Draw(body, Sitting.Plans.IsBehind ? null : Sitting.Plans.Latest, Sitting.Units, first);
}
