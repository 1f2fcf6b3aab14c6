using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.OneTool;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;
using ToolWear.Wording;

namespace ToolWear.Screens.CaliperRound;

/// <summary>To measure, and the caliper round through it.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class CaliperRoundScreen(Host host) : Screen(host)
{
    private const string RoundHeading = "To measure: the caliper round";
    private const string RoundEnded = "The caliper round is done";

    private readonly TypedLine line = new(typed => char.IsAsciiDigit(typed[0]) || typed is "." or ",");
    private readonly Stack<Step> steps = new();
    private readonly List<long> handled = [];
    private ImmutableArray<long> tools = [];
    private int wanting;
    private int gauge;
    private int who;
    private bool isAtEnd;
    private int recorded;

    // behind the last gauge mark of a tool stands the question what was found on it
    private LookQuestion? asked;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.CaliperRound;

    /// <inheritdoc />
    public override string Heading => isAtEnd ? RoundEnded : RoundHeading;

    /// <inheritdoc />
    public override TypedLine? Line => isAtEnd || Gauge is null ? null : line;

    /// <inheritdoc />
    protected override int Count => isAtEnd ? 0 : tools.Length;

    private ToolInShop? Tool => tools.IsEmpty || isAtEnd ? null : Sitting.Shop.Tools[tools[List.Chosen]];

    private ImmutableArray<GaugeMark> Gauges => Tool is { } tool ? ToMeasure.Gauges(tool.Tool) : [];

    private GaugeMark? Gauge => gauge < Gauges.Length ? Gauges[gauge] : null;

    private ImmutableArray<string> Hands => Sitting.Shop.Settings.Hands;

    private string? By => Hands.Length == 0 ? null : Hands[who % Hands.Length];

    /// <inheritdoc />
    public override void Open()
    {
        (tools, wanting) = ToMeasure.List(Sitting.Shop);
        steps.Clear();
        handled.Clear();
        isAtEnd = false;
        Go(0, 0);
    }

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.InHand => Tool is not null,
            Need.Asked => asked is { AsksPart: true },
            Need.Hands => Hands.Length > 1 && !isAtEnd,
            Need.Recorded => steps.Count > 0 || base.Has(need),
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        row.Act switch
        {
            Act.Enter or Act.Back when isAtEnd || tools.IsEmpty => KeyWords.ToTheRack,
            Act.Back when asked is { AsksPart: true } => KeyWords.OneBack,
            Act.Back when handled.Count == 0 => KeyWords.ToTheRack,
            Act.Enter when line.Text.Length > 0 => KeyWords.TakeIt,
            Act.Enter when asked is not null => asked.AsksPart ? "not known"
            : asked.HasAnswer ? "next tool"
            : "sound",
            _ => base.WordsOf(row),
        };

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Find when asked is null:
                Sitting.Say(
                    "The sizes come first; Enter skips one. Findings are asked at the end of each tool.",
                    Ink.Warn
                );
                break;
            case Act.Find:
                _ = ToolLookedOver.FindingWords.TryParse(
                    ToolLookedOver.FindingWords.All[which],
                    out Finding found,
                    out _
                );
                Answered(asked.Find(found, Sitting, By));
                break;
            case Act.Part:
                asked!.Place(which, Sitting, By);
                Answered(isDone: false);
                break;
            case Act.Who:
                who++;
                Sitting.Say(CaliperRoundText.LookedBy(By!));
                break;
            case Act.Enter when isAtEnd || tools.IsEmpty:
                Host.Go(Host.Home);
                break;
            case Act.Enter when line.Text.Length > 0:
                Read();
                break;
            case Act.Enter when asked is not null:
                Answered(asked.Enter(Sitting, By));
                break;
            case Act.Enter:
                steps.Push(new Step(List.Chosen, gauge, IsSkip: true));
                Next();
                break;
            case Act.Back when asked?.Back() == true:
                break;
            case Act.Back when !isAtEnd && handled.Count > 0:
                isAtEnd = true;
                asked = null;
                line.Clear();
                break;
            default:
                base.Do(act, which);
                break;
        }
    }

    /// <inheritdoc />
    public override void Moved() => Go(List.Chosen, 0);

    /// <inheritdoc />
    public override bool StepBack()
    {
        if (!steps.TryPeek(out Step? last) || !last.IsSkip)
        {
            return false;
        }

        steps.Pop();
        isAtEnd = false;
        Go(last.Tool, last.Gauge);
        return true;
    }

    /// <inheritdoc />
    public override void TakenBack(ImmutableArray<Entered> entries)
    {
        if (steps.TryPeek(out Step? last))
        {
            steps.Pop();
            isAtEnd = false;
            Go(last.Tool, last.Gauge);
        }
    }

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        if (isAtEnd)
        {
            ShopForecasts? ready = Sitting.Forecaster.IsBehind ? null : Sitting.Forecasts;
            CaliperRoundText.DrawVerdicts(body, Sitting.Shop, handled, ready);
            return;
        }

        CaliperRoundText.Draw(body, Sitting.Shop, tools, wanting, List, Shown());
    }

    private InHand? Shown()
    {
        if (Tool is not { } tool)
        {
            return null;
        }

        ExpectedReading? expected = Gauge is { } mark
            ? Measuring.Expected(Sitting.Shop, tool, Before(tool), mark.Name)
            : null;
        return new InHand(tool, History(tool), Of(gauge + 1, Gauges.Length), expected, line.Text, By, asked);
    }

    private GaugeHistory? History(ToolInShop tool) => Measuring.History(Sitting.Shop, tool, Gauge?.Name);

    private ToolForecast? Before(ToolInShop tool) => Sitting.Forecasts?.Find(tool.Id);

    private void Read()
    {
        ToolInShop tool = Tool!;
        if (!SizeText.TryParse(line.Text, Sitting.Units, out TypedSize size, out string refusal))
        {
            Sitting.Say(refusal, Ink.Warn);
            TypeAnew();
            return;
        }

        ToolMeasured said = new(tool.Mark, Gauge!.Name, Sitting.Today, null, size.Length, size.Resolution, By, null);
        Measuring deed = Measuring.Of(Sitting.Shop, tool, Before(tool), said);
        string? doubt = deed.Doubt is { } expected ? Improbable(expected.InWords(Sitting.Units)) : null;
        if (!Sitting.RecordAsking(doubt, [deed.Entry]))
        {
            TypeAnew();
            return;
        }

        Sitting.Say(Words.ReadingTaken(said, History(Sitting.Shop.Tools[tool.Id])!, Sitting.Units), Ink.Done);
        Handle(tool.Id);
        steps.Push(new Step(List.Chosen, gauge, IsSkip: false));
        Next();
    }

    // what is refused or asked about stays, and the next digit takes its place
    private void TypeAnew() => line.Offer(line.Text);

    private void Answered(bool isDone)
    {
        if (Sitting.Shop.Ledger.Count > recorded)
        {
            steps.Push(new Step(List.Chosen, gauge, IsSkip: false));
            Handle(asked!.Tool);
        }

        recorded = Sitting.Shop.Ledger.Count;
        if (isDone)
        {
            Next();
        }
    }

    private void Handle(long tool)
    {
        if (!handled.Contains(tool))
        {
            handled.Add(tool);
        }
    }

    private void Next()
    {
        if (gauge < Gauges.Length)
        {
            Go(List.Chosen, gauge + 1);
        }
        else if (List.Chosen + 1 < wanting)
        {
            Go(List.Chosen + 1, 0);
        }
        else
        {
            isAtEnd = true;
            asked = null;
            line.Clear();
        }
    }

    private void Go(int tool, int toGauge)
    {
        List.Choose(tool, tools.Length);
        gauge = toGauge;
        asked = Tool is { } inHand && gauge >= Gauges.Length ? new LookQuestion(inHand.Id) : null;
        recorded = Sitting.Shop.Ledger.Count;
        line.Clear();
    }

    /// <summary>A step of the round: which tool and gauge mark, and whether it was passed over.</summary>
    private sealed record Step(int Tool, int Gauge, bool IsSkip);

    private static string Of(int which, int all) => $"{which} of {all}";

    private static string Improbable(string expected) =>
        Words.AskedOnce($"Expected {expected}. End ground back? Jaw on scale?");
}
