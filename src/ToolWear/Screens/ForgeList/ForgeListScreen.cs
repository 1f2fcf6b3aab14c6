using System.Collections.Immutable;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results.Plans;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.ForgeList;

/// <summary>What has to be forged for the open orders, and what would have to be if things were different.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class ForgeListScreen(Host host) : Screen(host)
{
    private const string ForgeHeading = "Forge list";

    private ImmutableArray<Supposition> supposed = [];
    private SupposingSheet? asked;
    private Shop? wanted;
    private bool isFewer;
    private int first;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.ForgeList;

    /// <inheritdoc />
    public override string Heading => ForgeHeading;

    /// <inheritdoc />
    public override TypedLine? Line => asked?.Guided.Line;

    private Core.Planning.ForgeList? Now => Made(Sitting.Plans);

    private TwoForgeLists? Both =>
        !supposed.IsEmpty && Now is { } now && Made(Sitting.Supposed) is { } then ? new(now, then) : null;

    private bool IsList => asked is null && supposed.IsEmpty && Now is not null;

    /// <inheritdoc />
    protected override int Count => IsList ? ForgeListText.Count(Now!) : 0;

    private ForgeBatch? Chosen =>
        Now is { } list && List.Chosen < list.Batches.Length ? list.Batches[List.Chosen] : null;

    /// <inheritdoc />
    public override void Open()
    {
        (asked, isFewer, first, wanted) = (null, false, 0, null);
        supposed = [];
        Want();
    }

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.Row => IsList && Chosen is not null,
            Need.Choice => asked?.Guided.HasChoice ?? (IsList || Has(Need.MorePages)),
            Need.MorePages => IsList ? base.Has(need) : Both is { } both && both.Places.Length > BothText.RowsFor(Room),
            Need.Orders => asked is null && Now is { Calendar.Orders.IsEmpty: false },
            Need.Working => Sitting.Plans.IsBehind || (!supposed.IsEmpty && Sitting.Supposed.IsBehind),
            Need.Recorded => asked?.Guided.At > 0 || base.Has(need),
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
            case Act.Move when asked is not null:
                asked.Guided.Choose(which == 0 ? -1 : 1);
                break;
            case Act.Move or Act.Page when !supposed.IsEmpty:
                int step = act == Act.Page ? BothText.RowsFor(Room) : 1;
                first += which == 0 ? -step : step;
                break;
            case Act.Fewer:
                isFewer = Chosen is not null && !isFewer;
                break;
            case Act.Certainty or Act.MoreHeads or Act.Lose:
                asked = SupposingSheet.Of(act, Sitting.Shop, Chosen?.Tools);
                break;
            case Act.Enter when asked?.Guided.Next() == true:
                Suppose(asked);
                break;
            case Act.Stop:
                Sitting.Plans.Stop();
                Sitting.Supposed.Stop();
                break;
            case Act.Back when asked is not null:
                asked = null;
                break;
            case Act.Back when !supposed.IsEmpty:
                supposed = [];
                first = 0;
                break;
            default:
                base.Do(act, which);
                break;
        }
    }

    /// <inheritdoc />
    public override void Moved() => isFewer = false;

    /// <inheritdoc />
    public override bool StepBack() => asked?.Guided.Back() == true;

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        Want();
        Beside<Core.Planning.ForgeList> working =
            !supposed.IsEmpty && !Sitting.Plans.IsBehind ? Sitting.Supposed : Sitting.Plans;
        if (asked is not null)
        {
            GuidedText.Draw(body, asked.Guided, BothText.SupposedOnly);
        }
        else if (Both is { } both)
        {
            first = Math.Clamp(first, 0, Math.Max(0, both.Places.Length - BothText.RowsFor(body.Height)));
            _ = BothText.Draw(body, both, PlanWords.IfAll(supposed.Select(each => each.Words)), first);
        }
        else if (IsList)
        {
            ForgeListText.Draw(body, Now!, Sitting.Units, List, isFewer);
        }
        else if (working.IsStopped)
        {
            body.Put(0, 0, PlanWords.WasStopped, Ink.Quiet);
        }
        else
        {
            ProgressBar.Draw(body, working.Share);
        }
    }

    private static Core.Planning.ForgeList? Made(Beside<Core.Planning.ForgeList> plans) =>
        plans.IsBehind || plans.IsStopped ? null : plans.Latest;

    private void Suppose(SupposingSheet sheet)
    {
        Supposition? read = sheet.Read(Sitting.Shop, Sitting.Today, out (int At, string Why)? refusal);
        string? wrong = refusal?.Why;
        if (read is { } one)
        {
            Step step = WhatIf.After(Sitting.Shop, Sitting.Today, supposed.Append(one).Select(each => each.Entry));
            wrong = step.Refusal;
            if (step.After is { } shop)
            {
                supposed = supposed.Add(one);
                asked = null;
                Sitting.Supposed.Want(shop);
            }
        }

        if (wrong is not null)
        {
            sheet.Guided.Go(refusal?.At ?? 0);
            Sitting.Say(wrong, Ink.Warn);
        }
    }

    // the shop may change under the plan: one key takes the last thing back from anywhere
    private void Want()
    {
        if (!ReferenceEquals(wanted, Sitting.Shop))
        {
            wanted = Sitting.Shop;
            Sitting.Plans.Want(wanted);
            supposed = [];
        }
    }
}
