using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.Hammer;

/// <summary>The tally at the hammer.</summary>
/// <param name="host">Where it is shown.</param>
public sealed class HammerScreen(Host host) : Screen(host)
{
    /// <summary>How many stages have a key.</summary>
    public const int MostStages = 6;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Hammer;

    /// <inheritdoc />
    public override string Heading => Words.HammerHeading(Sitting.Shop.OpenSession);

    private ImmutableArray<BoardRow> Rows => Host.Board.Rows(Sitting.Shop);

    /// <inheritdoc />
    public override void Open()
    {
        if (Sitting.Shop.OpenSession is { } open && Host.BoardOf != open.Name)
        {
            Host.Take(LastTime.GoingOn(Sitting.Shop, open, Sitting.Forecasts), open.Name);
        }
    }

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.Chosen => !Host.Board.Chosen.IsEmpty,
            Need.Set => Host.Board.Together.Length > 1,
            Need.Stage => Host.Heads.Length > 0,
            Need.Recorded => Sitting.CanTakeBack || LastHeat().Length > 0,
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Heat when which < Rows.Length:
                Tally(Rows[which].Tools, Rows[which].Each);
                break;
            case Act.Heat:
                Sitting.Say(Words.NoSuchRow(which + 1), Ink.Warn);
                break;
            case Act.Together:
                Tally(Host.Board.Together, Heats.Of(1));
                break;
            case Act.Head when which < Host.Heads.Length:
                Head(which);
                break;
            case Act.Head:
                Sitting.Say(Words.NoSuchStage, Ink.Warn);
                break;
            case Act.Toggle:
                Host.Go(ScreenName.Choosing);
                break;
            case Act.Close:
                Host.Go(ScreenName.Closing);
                break;
            default:
                Host.Go(Host.Home);
                break;
        }
    }

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        if (Sitting.Shop.OpenSession is { } open)
        {
            HammerText.Draw(body, Sitting.Shop, open.Name, Host.Board, Host.Heads, Sitting.Forecasts);
        }
    }

    /// <summary>The last heat of the open session, also one of an evening that ended in a crash.</summary>
    /// <returns>Its entries, none where the session has none.</returns>
    public ImmutableArray<Entered> LastHeat()
    {
        if (Sitting.Shop.OpenSession is not { } open)
        {
            return [];
        }

        Entered[] heats =
        [
            .. Sitting
                .Shop.Ledger.Skip((int)open.Opening)
                .Where(entered => entered.What is HeatsWorked heat && heat.Session == open.Name)
                .Where(entered => !Sitting.Shop.CrossedOut.ContainsKey(entered.Number)),
        ];
        return [.. heats.Where(entered => entered.At == heats[^1].At)];
    }

    private void Tally(ImmutableArray<BoardTool> tools, Heats each)
    {
        Session open = Sitting.Shop.OpenSession!;
        if (Sitting.Record(Board.Heat(Sitting.Shop, open.Name, tools, each)))
        {
            Sitting.Say(
                Words.HeatAdded([.. tools.Select(tool => Sitting.Shop.Tools[tool.Tool].Mark.Text)], each),
                Ink.Done
            );
        }
    }

    private void Head(int stage)
    {
        Host.Heads = Host.Heads.SetItem(stage, Host.Heads[stage] + 1);
        string name = LastTime.Stages(Sitting.Shop, Host.Board.Pattern)[stage].Name;
        Sitting.Say(Words.HeadThrough(name, Host.Heads[stage]), Ink.Done);
        Sitting.Remember(() =>
        {
            Host.Heads = Host.Heads.SetItem(stage, Math.Max(0, Host.Heads[stage] - 1));
            return Words.HeadBack(name, Host.Heads[stage]);
        });
    }
}
