using ToolWear.Doors;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Screens.Drawing;
using ToolWear.Storage.Csv;

namespace ToolWear.Screens.FirstStart;

/// <summary>What a smith sees whose shop is empty.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class FirstStartScreen(Host host) : Screen(host)
{
    private const string FirstHeading = "ToolWear: an empty shop";
    private const string NothingImported = "it holds nothing to import";

    private TypedLine? path;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.FirstStart;

    /// <inheritdoc />
    public override string Heading => FirstHeading;

    /// <inheritdoc />
    public override TypedLine? Line => path;

    /// <inheritdoc />
    public override void Open() => path = null;

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Import:
                path = new TypedLine();
                break;
            case Act.Enter when path is not null:
                Import(path.Text);
                break;
            case Act.Back:
                path = null;
                break;
            case Act.Demo:
                Host.Leave(Afterwards.Demo);
                break;
            default:
                Host.Go(act);
                break;
        }
    }

    /// <inheritdoc />
    public override void Compose(Picture body) => FirstStartText.Draw(body, path?.Text);

    private void Import(string from)
    {
        try
        {
            CsvImported imported = NamedFiles.ReadSet(NamedFiles.FullPath("DIR", from), Sitting.Today);
            if (!imported.Faults.IsEmpty)
            {
                int more = imported.Faults.Length - 1 + imported.MoreFaults;
                Sitting.Say(ImportFaults(imported.Faults[0].ToString(), more), Ink.Warn);
            }
            else if (imported.Entries.IsEmpty)
            {
                Sitting.Say($"{from}: {NothingImported}", Ink.Warn);
            }
            else if (Sitting.RecordForGood(imported.Entries))
            {
                Host.Go(Host.Home);
                Sitting.Say(Imported(imported.Entries.Length, Sitting.Shop.Tools.Count), Ink.Done);
            }
        }
        catch (Exception e) when (e is RefusedException or IOException or UnauthorizedAccessException)
        {
            Sitting.Say(e.Message, Ink.Warn);
        }
    }

    private static string Imported(int entries, int tools) => $"{entries} entries imported, {tools} tools.";

    private static string ImportFaults(string first, int more) =>
        more == 0 ? $"{first}. Nothing was taken." : $"{first}, and {more} faults more. Nothing was taken.";
}
