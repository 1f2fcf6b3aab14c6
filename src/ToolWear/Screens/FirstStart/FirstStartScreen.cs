using ToolWear.Keys;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.FirstStart;

/// <summary>What a smith sees whose shop is empty.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class FirstStartScreen(Host host) : Screen(host)
{
    private const string FirstHeading = "ToolWear: an empty shop";

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.FirstStart;

    /// <inheritdoc />
    public override string Heading => FirstHeading;

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        if (act == Act.Demo)
        {
            Host.Leave(Afterwards.Demo);
        }
        else
        {
            base.Do(act, which);
        }
    }

    /// <inheritdoc />
    public override void Compose(Picture body) => FirstStartText.Draw(body);
}
