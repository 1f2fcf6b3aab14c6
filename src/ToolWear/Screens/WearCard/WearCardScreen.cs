using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;
using ToolWear.Screens.ToolRack;
using ToolWear.Wording;

namespace ToolWear.Screens.WearCard;

/// <summary>One tool.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class WearCardScreen(Host host) : GuidedScreen(host)
{
    private Card? card;
    private int gauge;
    private bool isInWords;
    private int first;
    private int lines;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.WearCard;

    /// <inheritdoc />
    protected override string ListHeading => Words.CardHeading(Tool?.Mark.Text);

    /// <inheritdoc />
    protected override int Count =>
        !isInWords ? ToolRackText.InService(Sitting.Shop).Length
        : lines > Room ? lines
        : 0;

    private ToolInShop? Tool => Host.ToolInHand is { } id ? Sitting.Shop.Tools.GetValueOrDefault(id) : null;

    // a card is made once for the forecasts that there are; null while they are being worked out
    private Card? Card
    {
        get
        {
            if (Tool is not { } tool || Sitting.Forecasts is not { } forecasts || forecasts.Find(tool.Id) is null)
            {
                return null;
            }

            if (card is null || !ReferenceEquals(card.Shop, forecasts.Shop) || card.Forecast.Tool.Id != tool.Id)
            {
                card = Card.Of(forecasts, forecasts.Shop.Tools[tool.Id], Sitting.Units);
            }

            return card;
        }
    }

    /// <inheritdoc />
    public override void Open()
    {
        base.Open();
        gauge = 0;
        first = 0;
        isInWords = false;
    }

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.InHand => Entry is null && Card is { Forecast.Tool.State: not ToolState.Scrapped },
            Need.Typing => Entry is not null,
            Need.Gauges => Entry is null && !isInWords && Tool?.Tool.GaugeMarks.Length > 1,
            Need.MorePages => Entry is null && isInWords && lines > Room,
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        row.Act switch
        {
            Act.Words => isInWords ? KeyWords.AsChart : KeyWords.InWords,
            Act.Move when Entry is null => isInWords ? KeyWords.ALine : KeyWords.ATool,
            _ => base.WordsOf(row),
        };

    /// <inheritdoc />
    protected override void DoInList(Act act, int which)
    {
        switch (act)
        {
            case Act.Gauge:
                gauge = (gauge + 1) % Tool!.Tool.GaugeMarks.Length;
                break;
            case Act.Rework:
                Begin(new ReworkSheet(Sitting, Card!.Forecast.Tool));
                break;
            case Act.GoTool:
                Host.Go(act);
                break;
            case Act.Scrap:
                Begin(new ScrapSheet(Card!.Forecast.Tool, Card.Into, Sitting.Units, Sitting.Shop));
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
    protected override void ComposeList(Picture body)
    {
        if (Card is not { } shown)
        {
            body.Put(0, 0, Words.WorkingOut, Ink.Quiet);
            return;
        }

        gauge = Math.Clamp(gauge, 0, Math.Max(0, shown.Forecast.Gauges.Length - 1));
        if (isInWords)
        {
            lines = WearCardText.DrawWords(body, shown, first);
        }
        else
        {
            ChartFigures? figures = shown.Forecast.Gauges.IsEmpty
                ? null
                : Sitting.Charts.Of(shown.Shop, shown.Forecast.Gauges[gauge]);
            WearCardText.DrawChart(body, shown, gauge, figures, Host.HasBraille);
        }
    }

    /// <inheritdoc />
    protected override void Entered(GuidedEntry entered)
    {
        string said = Sitting.Said.Sentence;
        Host.Go(Host.Home);
        Sitting.Say(said, Ink.Done);
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
