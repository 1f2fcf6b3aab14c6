using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Fields;
using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;
using ToolWear.Wording;
using Need = ToolWear.Keys.Need;

namespace ToolWear.Screens.Choosing;

/// <summary>Tools and pattern, chosen once a session.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class ChoosingScreen(Host host) : GuidedScreen(host)
{
    private const string ChoosingHeading = "At the hammer: tools and pattern";

    private ImmutableArray<BoardTool> offered = [];

    // the day and the care of the session that is being chosen for
    private SessionOpened details = EventFields.Sessions.Blank.Opened;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Choosing;

    /// <inheritdoc />
    protected override string ListHeading =>
        Shop.OpenSession is null && details.On != Sitting.Today
            ? $"{ChoosingHeading}, {details.On:yyyy-MM-dd}"
            : ChoosingHeading;

    private Shop Shop => Sitting.Shop;

    private ImmutableArray<BoardTool> Candidates => ChoosingText.Candidates(Shop, Host.Board.Pattern, offered);

    /// <inheritdoc />
    protected override int Count => Candidates.Length;

    /// <inheritdoc />
    public override void Open()
    {
        base.Open();
        details = EventFields.Sessions.Blank.Opened with { On = Sitting.Today };
        if (Shop.OpenSession is null)
        {
            Host.Take(LastTime.Of(Shop, LastTime.Pattern(Shop), Sitting.Forecasts), null);
        }

        offered = Host.Board.Chosen;
    }

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.Chosen => Entry is not null || !Host.Board.Chosen.IsEmpty,
            Need.NewSession => Entry is null && Shop.OpenSession is null,
            // a session keeps the pattern it was opened with
            Need.Pattern => Shop.OpenSession is null && base.Has(need),
            _ => base.Has(need),
        };

    /// <inheritdoc />
    protected override void DoInList(Act act, int which)
    {
        switch (act)
        {
            case Act.Toggle:
                Host.Board = Host.Board.Toggled(Candidates[List.Chosen]);
                break;
            case Act.Together:
                Host.Board = Host.Board.ToggledTogether(Candidates[List.Chosen]);
                break;
            case Act.Day:
                Begin(new SessionSheet(Sitting, details));
                break;
            case Act.Pattern:
                NextPattern();
                break;
            case Act.Move or Act.Page or Act.GoHandOver:
                base.DoInList(act, which);
                break;
            case Act.Enter:
                Begin();
                break;
            case Act.Heat when which >= Host.Board.Rows(Shop).Length:
                Sitting.Say(Words.NoSuchRow(which + 1), Ink.Warn);
                break;
            case Act.Heat when Begin():
                Host.Find(ScreenName.Hammer).Do(Act.Heat, which);
                break;
            default:
                Host.Go(Shop.OpenSession is null ? Host.Home : ScreenName.Hammer);
                break;
        }
    }

    /// <inheritdoc />
    protected override void ComposeList(Picture body) =>
        ChoosingText.Draw(body, Shop, Host.Board, Candidates, List, Sitting.Forecasts);

    /// <inheritdoc />
    protected override void Entered(GuidedEntry entered) => details = ((SessionSheet)entered).Made!.Opened;

    private void NextPattern()
    {
        string?[] patterns = [.. Shop.Patterns.Keys, null];
        int at = Array.IndexOf(patterns, Host.Board.Pattern);
        Host.Take(LastTime.Of(Shop, patterns[(at + 1) % patterns.Length], Sitting.Forecasts), null);
        offered = Host.Board.Chosen;
        List.Choose(0, Candidates.Length);
    }

    private bool Begin()
    {
        if (Shop.OpenSession is null)
        {
            string name = SessionNames.Next(Shop, details.On);
            SessionOpened opened = details with
            {
                Session = name,
                Pattern = Host.Board.Pattern,
                AtHammer = Host.Board.AtHammer(Shop),
            };
            if (!Sitting.Record(opened))
            {
                return false;
            }

            Host.Take(Host.Board, name);
            Sitting.Say(SessionOpen(name), Ink.Done);
        }

        Host.Go(ScreenName.Hammer);
        return true;
    }

    private static string SessionOpen(string name) => $"Session {name} is open.";
}
