using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results.Eyes;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.StockTake;

/// <summary>Every tool is looked for, one after another; then what was not seen.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class StockTakeScreen(Host host) : Screen(host)
{
    private const string StockTakeHeading = "Stock-take";
    private const string MissingHeading = "Stock-take: not seen";
    private const string AllAgain = "all tools";
    private const string KeepIt = "keep it";

    private (Shop Shop, bool OnlyMissing, ImmutableArray<ToolPresence> Tools)? known;
    private bool onlyMissing;

    // the tool of which it is asked whether it is lost
    private long? asked;

    // what was pressed though the last stock-take says otherwise
    private (long Tool, bool Seen)? doubted;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.StockTake;

    /// <inheritdoc />
    public override string Heading => onlyMissing ? MissingHeading : StockTakeHeading;

    /// <inheritdoc />
    protected override int Count => asked is null ? Tools.Length : 0;

    private ImmutableArray<ToolPresence> Tools
    {
        get
        {
            if (known is not { } last || !ReferenceEquals(last.Shop, Sitting.Shop) || last.OnlyMissing != onlyMissing)
            {
                ImmutableArray<ToolPresence> all = ToolPresence.All(Sitting.Shop);
                known = (Sitting.Shop, onlyMissing, onlyMissing ? [.. all.Where(each => each.IsMissing)] : all);
            }

            return known.Value.Tools;
        }
    }

    /// <inheritdoc />
    public override void Open()
    {
        (onlyMissing, asked, doubted) = (false, null, null);
        // where one stopped: the first tool that was not looked for today
        int next = Tools.ToList().FindIndex(each => each.LookedFor?.On != Sitting.Today);
        List.Choose(Math.Max(0, next), Tools.Length);
    }

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.Asked => asked is not null,
            Need.InHand => Count > 0,
            Need.Tools => asked is null && base.Has(need),
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        row.Act switch
        {
            Act.Back when asked is not null => KeepIt,
            Act.Words when onlyMissing => AllAgain,
            _ => base.WordsOf(row),
        };

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Seen:
                Answer(seen: true);
                break;
            case Act.NotSeen:
                Answer(seen: false);
                break;
            case Act.Words:
                onlyMissing = !onlyMissing;
                List.Choose(0, Tools.Length);
                break;
            case Act.GoTool:
                Host.ToolInHand = Chosen.Tool.Id;
                Host.Go(act);
                break;
            case Act.Lose:
                asked = Chosen.Tool.Id;
                break;
            case Act.Enter:
                ToolInShop lost = Sitting.Shop.Tools[asked!.Value];
                asked = null;
                if (Sitting.Record(new ToolScrapped(lost.Mark, Sitting.Today, ScrapCause.Lost, null, null)))
                {
                    Sitting.Say(EyeWords.ScrappedNow(lost.Mark), Ink.Done);
                }

                break;
            case Act.Back when asked is not null:
                asked = null;
                break;
            default:
                base.Do(act, which);
                break;
        }
    }

    /// <inheritdoc />
    public override void TakenBack(ImmutableArray<Entered> entries)
    {
        asked = null;
        if (entries[0].What is ToolLookedFor looked)
        {
            int row = Tools.ToList().FindIndex(each => each.Tool.Mark == looked.Tool);
            List.Choose(row < 0 ? List.Chosen : row, Tools.Length);
        }
    }

    /// <inheritdoc />
    public override void Compose(Picture body) =>
        StockTakeText.Draw(
            body,
            Tools,
            List,
            Sitting.Today,
            asked is { } id ? LostAsked(Sitting.Shop.Tools[id].Mark.Text) : null
        );

    private ToolPresence Chosen
    {
        get
        {
            List.Choose(List.Chosen, Tools.Length);
            return Tools[List.Chosen];
        }
    }

    private void Answer(bool seen)
    {
        ToolPresence before = Chosen;
        ToolInShop tool = before.Tool;
        if (before.SaysOtherwise(seen, Sitting.Today) && doubted != (tool.Id, seen))
        {
            doubted = (tool.Id, seen);
            Sitting.Say($"{FindingWords.LookedForBefore(before.LookedFor!)} {FindingWords.OnceMore}", Ink.Warn);
            return;
        }

        doubted = null;
        bool isLast = List.Chosen == Tools.Length - 1;
        if (!Sitting.Record(new ToolLookedFor(tool.Mark, Sitting.Today, seen, null)))
        {
            return;
        }

        Sitting.Say(SeenNow(tool.Mark.Text, seen), seen ? Ink.Done : Ink.Warn);
        ImmutableArray<ToolPresence> all = ToolPresence.All(Sitting.Shop);
        if (!onlyMissing && isLast && all.All(each => each.LookedFor?.On == Sitting.Today))
        {
            int missing = all.Count(each => each.IsMissing);
            onlyMissing = true;
            List.Choose(0, Tools.Length);
            Sitting.Say(StockTaken(all.Length - missing, missing), Ink.Done);
        }
        else if (!onlyMissing)
        {
            List.Choose(List.Chosen + 1, Tools.Length);
        }
    }

    private static string StockTaken(int seen, int missing) =>
        $"All tools were looked for: {seen} seen, {missing} not seen.";

    private static string SeenNow(string mark, bool seen) => seen ? $"{mark}: seen." : $"{mark}: not seen.";

    private static string LostAsked(string mark) => $"Scrap {mark} as lost?";
}
