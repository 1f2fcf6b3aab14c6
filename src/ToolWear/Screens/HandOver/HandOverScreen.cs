using System.Collections.Immutable;
using ToolWear.Core.Wear;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.HandOver;

/// <summary>What a helper is handed for tonight's pattern, for the screen as for the sheet.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class HandOverScreen(Host host) : Screen(host)
{
    private const string NoPatternTonight = "No pattern is chosen: p on the screen before chooses one.";

    private (ShopForecasts Forecasts, string Pattern, ImmutableArray<HandOverStep> Steps)? known;
    private ScreenName from = ScreenName.Choosing;
    private int first;
    private int lines;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.HandOver;

    /// <inheritdoc />
    public override string Heading =>
        Host.Board.Pattern is { } pattern ? Words.HandOverPattern(pattern) : Words.HandOverHeading;

    /// <inheritdoc />
    public override void Open()
    {
        from = Host.Before?.Name == ScreenName.Hammer ? ScreenName.Hammer : ScreenName.Choosing;
        first = 0;
    }

    /// <inheritdoc />
    public override bool Has(Need need) => need == Need.MorePages ? lines > Room : base.Has(need);

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        if (act == Act.Back)
        {
            // as it was: what is chosen there is not chosen anew
            Host.Return(from);
            return;
        }

        int step = act == Act.Page ? Room : 1;
        first = Math.Clamp(first + (which == 0 ? -step : step), 0, Math.Max(0, lines - Room));
    }

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        lines = 0;
        if (Host.Board.Pattern is not { } pattern)
        {
            body.Put(0, 0, NoPatternTonight, Ink.Quiet);
        }
        else if (Sitting.Forecasts is not { } forecasts || Sitting.Forecaster.IsBehind)
        {
            body.Put(0, 0, Words.WorkingOut, Ink.Quiet);
        }
        else
        {
            if (known is not { } last || last.Pattern != pattern || !ReferenceEquals(last.Forecasts, forecasts))
            {
                known = (forecasts, pattern, HandOverTable.Steps(forecasts, pattern));
            }

            lines = HandOverText.Draw(body, known.Value.Steps, pattern, first, Sitting.Units);
        }
    }
}
