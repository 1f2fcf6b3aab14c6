using System.Collections.Immutable;
using ToolWear.Core.Deeds;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results.Tools;
using ToolWear.Screens.Drawing;
using ToolWear.Wording;

namespace ToolWear.Screens.Hammer;

/// <summary>The tally at the hammer.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class HammerScreen(Host host) : Screen(host)
{
    private const string NoSuchStage = "No stage has that letter.";

    /// <summary>How many stages have a key.</summary>
    public const int MostStages = 6;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Hammer;

    /// <inheritdoc />
    public override string Heading => HammerHeading(Sitting.Shop.OpenSession);

    private ImmutableArray<BoardRow> Rows => Host.Board.Rows(Sitting.Shop);

    private ImmutableArray<PatternStage> Stages => LastTime.Stages(Sitting.Shop, Host.Board.Pattern);

    /// <inheritdoc />
    public override IEnumerable<KeyRow> KeyRows =>
        KeyTable
            .Of(Name)
            .Select(row =>
                row.Act == Act.Pedal && Pedal.KeyOf(Sitting.Shop) is { } key
                    ? row with
                    {
                        Names = [key],
                        Shown = key,
                    }
                    : row
            );

    /// <summary>What the pedal adds a heat to: the set that works together, or the one tool there is.</summary>
    private ImmutableArray<BoardTool> UnderThePedal =>
        Host.Board.Together.Length > 1 ? Host.Board.Together
        : Host.Board.Chosen.Length == 1 ? Host.Board.Chosen
        : [];

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
            Need.Stage => !Stages.IsEmpty,
            Need.Pedal => Pedal.KeyOf(Sitting.Shop) is not null && !UnderThePedal.IsEmpty,
            Need.Recorded => Sitting.CanTakeBack || LastTally().Length > 0,
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
            case Act.Pedal:
                Tally(UnderThePedal, Heats.Of(1));
                break;
            case Act.Head when which < Stages.Length:
                Head(which);
                break;
            case Act.Head:
                Sitting.Say(NoSuchStage, Ink.Warn);
                break;
            case Act.Toggle:
                Host.Go(ScreenName.Choosing);
                break;
            case Act.GoHandOver:
                Host.Go(act);
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
            HammerText.Draw(body, Sitting.Shop, open.Name, Host.Board, Sitting.Forecasts);
        }
    }

    /// <summary>The last heat or head of the open session, also one of an evening that ended in a crash.</summary>
    /// <returns>Its entries, none where the session has none.</returns>
    public override ImmutableArray<Entered> LastTally()
    {
        if (Sitting.Shop.OpenSession is not { } open)
        {
            return [];
        }

        Entered[] tallies =
        [
            .. Sitting
                .Shop.Ledger.Skip((int)open.Opening)
                .Where(entered => Sitting.IsFromBefore(entered) && IsTallyOf(open.Name, entered.What))
                .Where(entered => !Sitting.Shop.CrossedOut.ContainsKey(entered.Number)),
        ];
        return [.. tallies.Where(entered => entered.At == tallies[^1].At)];
    }

    private static bool IsTallyOf(string session, LedgerEntry what) =>
        what switch
        {
            HeatsWorked heats => heats.Session == session,
            HeadsDone heads => heads.Session == session,
            _ => false,
        };

    private void Tally(ImmutableArray<BoardTool> tools, Heats each)
    {
        Session open = Sitting.Shop.OpenSession!;
        BoardTool[] before = [.. tools.Where(tool => MoreToday(tool) > 0)];
        if (Sitting.Record(Board.Heat(Sitting.Shop, open.Name, tools, each)))
        {
            Sitting.Say(HeatAdded([.. tools.Select(tool => Sitting.Shop.Tools[tool.Tool].Mark.Text)], each), Ink.Done);
            string[] against =
            [
                .. tools
                    .Select(tool => FindingWords.Against(Sitting.Shop, Sitting.Forecasts, tool.Tool))
                    .OfType<string>(),
            ];
            if (against.Length > 0)
            {
                Sitting.Say($"{Sitting.Said.Sentence} {string.Join(' ', against)}", Ink.Warn);
            }

            // once, at the heat with which a tool has done what it should do today
            if (before.Any(tool => MoreToday(tool) == 0))
            {
                Sitting.Ring();
            }
        }
    }

    private int? MoreToday(BoardTool tool) =>
        HammerText.MoreToday(Sitting.Shop, Sitting.Forecasts, Sitting.Shop.OpenSession?.Opened.Pattern, tool);

    private void Head(int stage)
    {
        string session = Sitting.Shop.OpenSession!.Name;
        string name = Stages[stage].Name;
        if (Sitting.Record(new HeadsDone(session, name, 1)))
        {
            Sitting.Say(HeadThrough(name, Sitting.Shop.Sessions[session].HeadsByStage[name]), Ink.Done);
        }
    }

    private static string HammerHeading(Session? open) =>
        open is null ? "At the hammer" : $"At the hammer: {open.Name}{(open.Opened.Pattern is { } p ? ", " + p : "")}";

    private static string HeatAdded(ImmutableArray<string> marks, Heats each) =>
        $"{string.Join(" + ", marks)}: {(each == Core.Measure.Heats.Half ? "half a heat each" : marks.Length > 1 ? "1 heat each" : "1 heat")} saved.";

    private static string HeadThrough(string stage, int heads) => $"{Words.HeadsAt(stage, heads)}, saved.";
}
