using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.ShopPage;

/// <summary>The shop's settings and the cautions that hold everywhere.</summary>
/// <param name="host">Where it is shown.</param>
public sealed class ShopPageScreen(Host host) : Screen(host)
{
    private readonly ListPlace place = new();
    private TypedLine? value;
    private int width = 80;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.ShopPage;

    /// <inheritdoc />
    public override string Heading => Words.ShopHeadingPage;

    /// <inheritdoc />
    public override TypedLine? Line => value;

    private int Rows => ShopPageText.RowsFor(width, Room, ShopPageText.Settings[place.Chosen]);

    /// <inheritdoc />
    public override void Open() => value = null;

    /// <inheritdoc />
    public override bool Has(Need need) =>
        need switch
        {
            Need.Choice => value is null,
            Need.MorePages => value is null && ShopPageText.Settings.Length > Rows,
            _ => base.Has(need),
        };

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        row.Act == Act.Enter && value is not null ? Words.TakeIt : base.WordsOf(row);

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Move or Act.Page when value is null:
                place.Move(act, which, ShopPageText.Settings.Length, Rows);
                break;
            case Act.Enter when value is null:
                value = new TypedLine();
                value.Offer(Sitting.Shop.Settings.Get(ShopPageText.Settings[place.Chosen]));
                break;
            case Act.Enter:
                Change(ShopPageText.Settings[place.Chosen], value!.Text);
                break;
            case Act.Back when value is not null:
                value = null;
                break;
            case Act.Back:
                Host.Go(Host.Home);
                break;
            default:
                break;
        }
    }

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        width = body.Width;
        ShopPageText.Draw(body, Sitting.Shop, place, value?.Text);
    }

    private void Change(ShopSetting setting, string to)
    {
        SettingChanged change = new(setting.Name, to);
        if (Sitting.Record(change))
        {
            Sitting.Say(Results.Tools.EntryWords.Of(change, Sitting.Units), Ink.Done);
            value = null;
        }
    }
}
