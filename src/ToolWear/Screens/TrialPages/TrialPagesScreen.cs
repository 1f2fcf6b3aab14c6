using ToolWear.Keys;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.TrialPages;

/// <summary>Steels, lubricants and ways of cooling, where the records can say something.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class TrialPagesScreen(Host host) : Screen(host)
{
    private const string TrialHeading = "Trials";

    private int first;
    private int lines;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.TrialPages;

    /// <inheritdoc />
    public override string Heading => TrialHeading;

    /// <inheritdoc />
    public override void Open()
    {
        first = 0;
        Sitting.Trials.Want(Sitting.Shop);
        Sitting.Kept.Want(Sitting.Shop);
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
        lines = TrialPagesText.Draw(
            body,
            Sitting.Trials.IsBehind ? null : Sitting.Trials.Latest,
            Sitting.Kept.Latest ?? "",
            first
        );
}
