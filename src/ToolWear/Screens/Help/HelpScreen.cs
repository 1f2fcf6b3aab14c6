using ToolWear.Keys;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Help;

/// <summary>The keys of the screen before, and what it is for.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class HelpScreen(Host host) : Screen(host)
{
    private ScreenName of = ScreenName.ToolRack;
    private int first;
    private int lines;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Help;

    /// <inheritdoc />
    public override string Heading => HelpHeading(Host.Find(of).Heading);

    /// <inheritdoc />
    public override void Open()
    {
        of = Host.Before?.Name ?? ScreenName.ToolRack;
        first = 0;
    }

    /// <inheritdoc />
    public override bool Has(Need need) => need == Need.MorePages ? lines > Room : base.Has(need);

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        if (act == Act.Page)
        {
            first = Math.Clamp(first + (which == 0 ? -Room : Room), 0, Math.Max(0, lines - Room));
        }
        else if (act == Act.Back)
        {
            Host.Return();
        }
    }

    /// <inheritdoc />
    public override void Compose(Picture body) => lines = HelpText.Draw(body, of, first);

    private static string HelpHeading(string of) => $"Help: {of}";
}
