using System.Collections.Immutable;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.Eyes;

/// <summary>The eyes of the shop and the handles that go into them.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class EyesScreen(Host host) : GuidedScreen(host)
{
    private const string EyesHeading = "Eyes and handles";
    private const string NoEyes = "No eye yet. Press a to add one, n to add a handle as bought.";

    private int first;
    private int lines;
    private (ShopForecasts? Forecasts, Shop Shop, string Chosen, EyePage Page)? known;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Eyes;

    /// <inheritdoc />
    protected override string ListHeading => EyesHeading;

    /// <inheritdoc />
    protected override int Count => Rows.Length;

    // eyes first, then handles
    private ImmutableArray<EyeOrHandle> Rows =>
        [
            .. Sitting.Shop.Eyes.Values.Select(eye => new EyeOrHandle(eye, null)),
            .. Sitting.Shop.Handles.Values.Select(handle => new EyeOrHandle(null, handle)),
        ];

    private EyeOrHandle? Chosen =>
        Rows is { IsEmpty: false } rows ? rows[Math.Min(List.Chosen, rows.Length - 1)] : null;

    /// <inheritdoc />
    public override void Open()
    {
        base.Open();
        first = 0;
    }

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.MorePages => Entry is null && lines > EyesText.RowsFor(Room),
            _ => base.Has(need),
        };

    /// <inheritdoc />
    protected override void DoInList(Act act, int which)
    {
        switch (act)
        {
            case Act.Page:
                int room = EyesText.RowsFor(Room);
                first = Math.Clamp(first + (which == 0 ? -room : room), 0, Math.Max(0, lines - room));
                break;
            case Act.Add:
                Begin(new EyeSheet(Sitting, null));
                break;
            case Act.NewHandle:
                Begin(new HandleSheet(Sitting, null));
                break;
            case Act.Enter when Chosen!.Eye is { } eye:
                Begin(new EyeSheet(Sitting, eye));
                break;
            case Act.Enter:
                Begin(new HandleSheet(Sitting, Chosen!.Handle!));
                break;
            case Act.GoSeries when Chosen!.Eye is { } eye:
                GoSeries(eye.Name);
                break;
            case Act.GoSeries:
                Begin(new EyeSheet(Sitting, null, Chosen!.Handle));
                break;
            default:
                base.DoInList(act, which);
                break;
        }
    }

    /// <inheritdoc />
    public override void Moved() => first = 0;

    /// <inheritdoc />
    protected override void ComposeList(Picture body)
    {
        List.Choose(List.Chosen, Rows.Length);
        if (Chosen is not { } chosen)
        {
            body.Put(0, 0, NoEyes, Ink.Quiet);
            return;
        }

        lines = EyesText.Draw(body, Rows, List, PageOf(chosen), first, Host.HasBraille, Sitting.Units);
    }

    /// <inheritdoc />
    protected override void Entered(GuidedEntry entered)
    {
        switch (entered)
        {
            case EyeSheet { Made: { } eye }:
                Choose(row => row.Eye?.Name == eye.Name);
                // a new eye has no series yet: one is proposed
                if (!Sitting.Shop.Series.Keys.Any(key => key.Eye == eye.Name))
                {
                    GoSeries(eye.Name);
                }

                break;
            case HandleSheet { Made: { } handle } sheet:
                Choose(row => row.Handle?.Name == handle.Name);
                if (sheet.IsNew)
                {
                    Begin(new EyeSheet(Sitting, null, handle));
                }

                break;
            default:
                break;
        }
    }

    private void Choose(Func<EyeOrHandle, bool> isIt) =>
        List.Choose(Rows.ToList().FindIndex(row => isIt(row)), Rows.Length);

    private void GoSeries(string eye)
    {
        Host.EyeInHand = eye;
        Host.Go(ScreenName.SeriesPages);
    }

    // worked out once for the forecasts that there are, not at every key
    private EyePage PageOf(EyeOrHandle chosen)
    {
        if (
            known is not { } last
            || !ReferenceEquals(last.Shop, Sitting.Shop)
            || !ReferenceEquals(last.Forecasts, Sitting.Forecasts)
            || last.Chosen != chosen.Key
        )
        {
            known = (
                Sitting.Forecasts,
                Sitting.Shop,
                chosen.Key,
                EyePage.Of(Sitting.Shop, Sitting.Forecasts, chosen, Sitting.Units)
            );
        }

        return known.Value.Page;
    }
}
