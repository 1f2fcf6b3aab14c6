using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Results;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.ToolRack;

namespace ToolWear.Screens.WearCard;

/// <summary>One tool.</summary>
/// <param name="host">Where it is shown.</param>
public sealed class WearCardScreen(Host host) : Screen(host)
{
    private Card? card;
    private int gauge;
    private bool isInWords;
    private int first;
    private int lines;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.WearCard;

    /// <inheritdoc />
    public override string Heading => Words.CardHeading(Tool?.Mark.Text);

    private ToolInShop? Tool => Host.ToolInHand is { } id ? Sitting.Shop.Tools.GetValueOrDefault(id) : null;

    /// <inheritdoc />
    public override void Open()
    {
        gauge = 0;
        first = 0;
        isInWords = false;
    }

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.Choice => isInWords ? lines > Room : ToolRackText.InService(Sitting.Shop).Length > 1,
            Need.Gauges => !isInWords && Tool?.Tool.GaugeMarks.Length > 1,
            Need.MorePages => isInWords && lines > Room,
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        row.Act switch
        {
            Act.Words => isInWords ? Words.AsChart : Words.InWords,
            Act.Move => isInWords ? Words.ALine : Words.ATool,
            _ => base.WordsOf(row),
        };

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Gauge:
                gauge = (gauge + 1) % Tool!.Tool.GaugeMarks.Length;
                break;
            case Act.Words:
                isInWords = !isInWords;
                first = 0;
                break;
            case Act.Move when !isInWords:
                NextTool(which == 0 ? -1 : 1);
                break;
            case Act.Move or Act.Page:
                int step = act == Act.Page ? Room : 1;
                first = Math.Clamp(first + (which == 0 ? -step : step), 0, Math.Max(0, lines - Room));
                break;
            default:
                Host.Go(Host.Home);
                break;
        }
    }

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        if (Tool is not { } tool || Sitting.Forecasts is not { } forecasts || !forecasts.All.ContainsKey(tool.Id))
        {
            body.Put(0, 0, Words.WorkingOut, Ink.Quiet);
            return;
        }

        // a card is made once for the forecasts that there are
        if (card is null || !ReferenceEquals(card.Shop, forecasts.Shop) || card.Forecast.Tool.Id != tool.Id)
        {
            card = Card.Of(forecasts, forecasts.Shop.Tools[tool.Id], Sitting.Units);
        }

        gauge = Math.Clamp(gauge, 0, Math.Max(0, card.Forecast.Gauges.Length - 1));
        if (isInWords)
        {
            lines = WearCardText.DrawWords(body, card, first);
        }
        else
        {
            ChartFigures? figures = card.Forecast.Gauges.IsEmpty
                ? null
                : Sitting.Charts.Of(card.Shop, card.Forecast.Gauges[gauge]);
            WearCardText.DrawChart(body, card, gauge, figures, Host.HasBraille);
        }
    }

    private void NextTool(int step)
    {
        ImmutableArray<ToolInShop> tools = ToolRackText.InService(Sitting.Shop);
        int at = tools.ToList().FindIndex(tool => tool.Id == Host.ToolInHand);
        if (tools.Length > 0)
        {
            Host.ToolInHand = tools[Math.Clamp(at + step, 0, tools.Length - 1)].Id;
            gauge = 0;
        }
    }
}
