using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.SeriesPages;

/// <summary>The series for an eye: as entered, or as proposed; changed here, and entered when it is right.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class SeriesPagesScreen(Host host) : GuidedScreen(host)
{
    private const string NotYetRecorded = "Changed here; t saves it.";
    private const string StaysEntered = "It is saved: cross its entry out in the ledger.";

    private EyeDescribed? eye;
    private ImmutableArray<Series> draft = [];
    private SeriesPlan? plan;
    private Shop? planOf;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.SeriesPages;

    /// <inheritdoc />
    protected override string ListHeading => SeriesHeading(eye?.Name ?? "");

    /// <inheritdoc />
    protected override int Count => draft.Length;

    private bool IsChanged => plan?.Tools.Any(tool => !tool.IsEntered) == true;

    private SeriesPlan? Plan
    {
        get
        {
            if (eye is not null && !draft.IsEmpty && (plan is null || !ReferenceEquals(planOf, Sitting.Shop)))
            {
                (plan, planOf) = (SeriesPlan.Of(Sitting.Shop, eye, draft), Sitting.Shop);
            }

            return plan;
        }
    }

    /// <inheritdoc />
    public override void Open()
    {
        base.Open();
        (eye, draft, plan) = (Host.EyeInHand is { } name ? Sitting.Shop.Eyes.GetValueOrDefault(name) : null, [], null);
        if (eye is null)
        {
            return;
        }

        if (SeriesPlan.TryFor(Sitting.Shop, eye, out SeriesPlan? found, out string? refusal))
        {
            (plan, planOf) = (found, Sitting.Shop);
            draft = [.. found.Tools.Select(tool => tool.Series)];
        }
        else
        {
            Sitting.Say(refusal, Ink.Warn);
        }
    }

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.Changed => IsChanged,
            Need.Eye => eye is not null,
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override void TakenBack(ImmutableArray<Entered> entries) => plan = null;

    /// <inheritdoc />
    protected override void DoInList(Act act, int which)
    {
        switch (act)
        {
            case Act.Enter:
                Begin(new SeriesSheet(Sitting, eye!.Name, Plan!.Tools[List.Chosen].Series));
                break;
            case Act.Add:
                Begin(new SeriesSheet(Sitting, eye!.Name, null));
                break;
            case Act.LeaveOut:
                LeaveOut(Plan!.Tools[List.Chosen]);
                break;
            case Act.TakeAll:
                TakeAll();
                break;
            case Act.Back:
                Host.Go(ScreenName.Eyes);
                break;
            default:
                base.DoInList(act, which);
                break;
        }
    }

    /// <inheritdoc />
    protected override void ComposeList(Picture body)
    {
        List.Choose(List.Chosen, draft.Length);
        SeriesPagesText.Draw(body, Plan, List, Sitting.Units);
    }

    /// <inheritdoc />
    protected override void Entered(GuidedEntry entered)
    {
        Series series = ((SeriesSheet)entered).Made!.Series;
        Series? same = draft.FirstOrDefault(each => each.Form == series.Form && each.Place == series.Place);
        draft = same is null ? draft.Add(series) : draft.Replace(same, series);
        plan = null;
        Sitting.Say(NotYetRecorded, Ink.Warn);
    }

    private void LeaveOut(PlannedTool tool)
    {
        if (tool.IsEntered)
        {
            Sitting.Say(StaysEntered, Ink.Warn);
            return;
        }

        draft = draft.Remove(tool.Series);
        plan = null;
    }

    private void TakeAll()
    {
        ImmutableArray<LedgerEntry> entries =
        [
            .. Plan!.Tools.Where(tool => !tool.IsEntered).Select(tool => new SeriesDescribed(tool.Series)),
        ];
        if (Sitting.Record(entries))
        {
            plan = null;
            Sitting.Say(SeriesEntered(eye!.Name, entries.Length), Ink.Done);
        }
    }

    private static string SeriesHeading(string eye) => $"Series for eye {eye}";

    private static string SeriesEntered(string eye, int places) =>
        $"The series for eye {eye}: {places} {(places == 1 ? "place" : "places")} saved.";
}
