using System.Globalization;
using ToolWear.Core.Planning;
using ToolWear.Core.Planning.Decisions;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results.Plans;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;
using ToolWear.Wording;

namespace ToolWear.Screens.Costs;

/// <summary>What tooling costs a heat and a head; whether a rework pays.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class CostsScreen(Host host) : Screen(host)
{
    private const string CostsHeading = "Costs";
    private const string HoursAsked = "Hours";
    private const string ElseAsked = "Other cost";
    private const string GainsAsked = "Heats gained";
    private const string HoursMeaning = "How many hours the rework takes, such as 0.4.";
    private const string ElseMeaning = "What else it costs, such as heat treatment; 0 for nothing.";
    private const string GainsMeaning = "How many heats it gains, by your own experience.";
    private const string ChooseATool = "Choose a tool below the heads: a head is not re-forged.";

    private const int Hours = 0;
    private const int Else = 1;
    private const int Gains = 2;

    private GuidedLine? asked;
    private string? answer;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Costs;

    /// <inheritdoc />
    public override string Heading => CostsHeading;

    /// <inheritdoc />
    public override TypedLine? Line => asked?.Line;

    private ToolingCosts? Costs => Sitting.Costs.IsBehind || Sitting.Costs.IsStopped ? null : Sitting.Costs.Latest;

    /// <inheritdoc />
    protected override int Count => asked is null && Costs is { } costs ? costs.Heads.Length + costs.Places.Length : 0;

    private PlaceHeatCost? Chosen =>
        Costs is { } costs
        && List.Chosen >= costs.Heads.Length
        && List.Chosen < costs.Heads.Length + costs.Places.Length
            ? costs.Places[List.Chosen - costs.Heads.Length]
            : null;

    private string Below => answer ?? (Costs is { } costs && Count > 0 ? CostsText.Said(costs, List.Chosen) : "");

    /// <inheritdoc />
    public override void Open()
    {
        (asked, answer) = (null, null);
        Sitting.Costs.Want(Sitting.Shop);
    }

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.Working => Sitting.Costs.IsBehind,
            Need.Recorded => asked?.At > 0 || base.Has(need),
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        asked is null ? base.WordsOf(row) : KeyWords.GuidedKey(row, base.WordsOf(row));

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Stop:
                Sitting.Costs.Stop();
                break;
            case Act.Reforge:
                Ask();
                break;
            case Act.Enter when asked?.Next() == true:
                Weigh(asked);
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
    public override void Moved() => answer = null;

    /// <inheritdoc />
    public override bool StepBack() => asked?.Back() == true;

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        if (asked is not null)
        {
            GuidedText.Draw(body, asked, $"{PlanWords.ReforgeBasis}\n{Cautions.RestoringCautions}");
        }
        else if (Costs is { } costs)
        {
            CostsText.Draw(body, costs, List, Below);
        }
        else if (Sitting.Costs.IsStopped)
        {
            body.Put(0, 0, PlanWords.WasStopped, Ink.Quiet);
        }
        else
        {
            ProgressBar.Draw(body, Sitting.Costs.Share);
        }
    }

    private void Ask()
    {
        if (Chosen is not { } chosen)
        {
            Sitting.Say(ChooseATool, Ink.Warn);
        }
        else if (chosen.Cost.Total is null)
        {
            Sitting.Say(PlanWords.NoCostOf(chosen.Tools), Ink.Warn);
        }
        else
        {
            asked = new GuidedLine([
                new(HoursAsked, HoursMeaning, []),
                new(ElseAsked, ElseMeaning, []),
                new(GainsAsked, GainsMeaning, []),
            ]);
            asked.Offer(Else, "0");
        }
    }

    private void Weigh(GuidedLine typed)
    {
        foreach (int question in (int[])[Hours, Else, Gains])
        {
            if (Amount(typed[question]) is not { } amount || (question == Gains && amount <= 0))
            {
                typed.Go(question);
                Sitting.Say(NoAmount(typed[question]), Ink.Warn);
                return;
            }
        }

        PlaceHeatCost chosen = Chosen!;
        double rework =
            (Amount(typed[Hours])!.Value * (double)(chosen.Cost.HourRate ?? 0)) + Amount(typed[Else])!.Value;
        ReforgeOrScrap weighed = ReforgeOrScrap.Of(
            rework,
            Amount(typed[Gains])!.Value,
            (double)chosen.Cost.Total!.Value,
            chosen.Life
        );
        answer = ReforgeSaid(chosen.Tools, weighed);
        asked = null;
    }

    private static double? Amount(string text) =>
        double.TryParse(
            text.Trim().Replace(',', '.'),
            NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out double amount
        )
        && amount <= 1e9
            ? amount
            : null;

    private static string ReforgeSaid(ToolPlace place, ReforgeOrScrap answer) =>
        $"{place}: {PlanWords.ReforgeAnswer(answer)}. A heat costs {PlanWords.Money(answer.ReworkAHeat)} by the rework, {PlanWords.Money(answer.NewAHeat.Value)} by a new one ({CostsText.MoneyRange(answer.NewAHeat)}).";

    private static string NoAmount(string text) => $"\"{text}\": a number such as 0.4";
}
