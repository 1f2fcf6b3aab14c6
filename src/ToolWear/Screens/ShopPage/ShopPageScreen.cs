using ToolWear.Core.Ledger;
using ToolWear.Core.Shops;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;

namespace ToolWear.Screens.ShopPage;

/// <summary>The shop's settings and the cautions that hold everywhere.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class ShopPageScreen(Host host) : Screen(host)
{
    private const string ShopHeadingPage = "Shop";

    private TypedLine? value;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.ShopPage;

    /// <inheritdoc />
    public override string Heading => ShopHeadingPage;

    /// <inheritdoc />
    public override TypedLine? Line => value;

    /// <inheritdoc />
    protected override int Count => value is null ? ShopPageText.Settings.Length : 0;

    /// <inheritdoc />
    public override void Open()
    {
        value = null;
        Sitting.Kept.Want(Sitting.Shop);
    }

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        row.Act == Act.Enter && value is not null ? KeyWords.TakeIt : base.WordsOf(row);

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Enter when value is null:
                value = new TypedLine();
                value.Offer(Sitting.Shop.Settings.Get(ShopPageText.Settings[List.Chosen]));
                break;
            case Act.Enter:
                Change(ShopPageText.Settings[List.Chosen], value!.Text);
                break;
            case Act.Back when value is not null:
                value = null;
                break;
            default:
                base.Do(act, which);
                break;
        }
    }

    /// <inheritdoc />
    public override void Compose(Picture body) =>
        ShopPageText.Draw(body, Sitting.Shop, List, value?.Text, Sitting.Kept.Latest ?? "");

    private void Change(ShopSetting setting, string to)
    {
        SettingChanged change = new(setting.Name, ShopSetting.Meant(to));
        if (Sitting.Record(change))
        {
            Sitting.Say(Results.Tools.EntryWords.Of(change, Sitting.Units), Ink.Done);
            value = null;
        }
    }
}
