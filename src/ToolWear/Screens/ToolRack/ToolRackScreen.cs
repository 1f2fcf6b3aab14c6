using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Shops;
using ToolWear.Doors;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Storage;
using ToolWear.Wording;

namespace ToolWear.Screens.ToolRack;

/// <summary>The tools in service.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class ToolRackScreen(Host host) : Screen(host)
{
    private const string RackHeading = "Tool rack";
    private const string NoFileName = "Nothing was written: no file was named.";
    private const string NotWorkedOut = "The forecasts are still being worked out; try again in a moment.";

    private RackRows known = new(null, Core.Measure.LengthUnit.Mm);
    private TypedLine? path;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.ToolRack;

    /// <inheritdoc />
    public override string Heading => RackHeading;

    /// <inheritdoc />
    public override TypedLine? Line => path;

    private ImmutableArray<ToolInShop> Tools => ToolRackText.InService(Sitting.Shop);

    /// <inheritdoc />
    public override void Open() => path = null;

    /// <inheritdoc />
    protected override int Count => Tools.Length;

    /// <inheritdoc />
    public override bool Has(Need need) => need == Need.InHand ? path is null && Count > 0 : base.Has(need);

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        row.Act == Act.Enter && path is not null ? KeyWords.WriteIt : base.WordsOf(row);

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Export:
                AskForExport();
                break;
            case Act.Back:
                path = null;
                break;
            case Act.Enter when path is not null:
                Export(path.Text);
                break;
            case Act.GoTool:
                Host.ToolInHand = Tools[List.Chosen].Id;
                Host.Go(act);
                break;
            case Act.Enter:
                Host.ToolInHand = Tools[List.Chosen].Id;
                Host.Go(ScreenName.WearCard);
                break;
            default:
                base.Do(act, which);
                break;
        }
    }

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        // figures are worked out once for the forecasts that there are, not at every key
        if (!ReferenceEquals(known.Forecasts, Sitting.Forecasts) || known.Units != Sitting.Units)
        {
            known = new RackRows(Sitting.Forecasts, Sitting.Units);
        }

        ToolRackText.Draw(body, Sitting.Shop, known, List, path?.Text);
    }

    private void AskForExport()
    {
        path = new TypedLine();
        path.Offer(UsualExport(Sitting.Today));
    }

    private void Export(string file)
    {
        if (string.IsNullOrWhiteSpace(file))
        {
            path = null;
            Sitting.Say(NoFileName, Ink.Warn);
            return;
        }

        if (Sitting.Forecasts is not { } forecasts || Sitting.Forecaster.IsBehind)
        {
            // what was typed stays: Enter once more is all it takes
            Sitting.Say(NotWorkedOut, Ink.Warn);
            return;
        }

        path = null;

        try
        {
            file = Path.GetFullPath(NamedFiles.Pasted(file));
            (int readings, _) = HistoryFile.Write(Sitting.Site, file, forecasts);
            Sitting.Say(Words.Exported(readings, file), Ink.Done);
        }
        catch (Exception e)
            when (e is IOException or UnauthorizedAccessException or ArgumentException or StoreException)
        {
            Sitting.Say(e.Message, Ink.Warn);
        }
    }

    private static string UsualExport(DateOnly today) =>
        string.Create(CultureInfo.InvariantCulture, $"wear-{today:yyyy-MM-dd}.csv");
}
