using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Doors;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results.Looks;
using ToolWear.Screens.Drawing;
using ToolWear.Storage.Csv;

namespace ToolWear.Screens.FirstStart;

/// <summary>What a smith sees whose shop is empty. A table or folder is tried first, then comes in with one key.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class FirstStartScreen(Host host) : Screen(host)
{
    private const string FirstHeading = "ToolWear: an empty shop";

    private TypedLine? path;
    private (ImmutableArray<LedgerEntry> Entries, ImmutableArray<string> Lines)? tried;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.FirstStart;

    /// <inheritdoc />
    public override string Heading => FirstHeading;

    /// <inheritdoc />
    public override TypedLine? Line => path;

    /// <inheritdoc />
    protected override int Count => tried?.Lines.Length ?? 0;

    /// <inheritdoc />
    public override bool Has(Need need) => (need == Need.Typing && tried is not null) || base.Has(need);

    /// <inheritdoc />
    public override void Open() => (path, tried) = (null, null);

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Enter when tried is { Entries: var sound }:
                Enter(sound);
                break;
            case Act.Import:
                Open();
                path = new TypedLine();
                break;
            case Act.Enter when path is not null:
                Try(path.Text.Trim());
                break;
            case Act.Back:
                Open();
                break;
            case Act.Demo:
                Host.Leave(Afterwards.Demo);
                break;
            default:
                base.Do(act, which);
                break;
        }
    }

    /// <inheritdoc />
    public override string WordsOf(KeyRow row) =>
        row.Act == Act.Enter && tried is not null ? "import" : base.WordsOf(row);

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        if (tried is { } shown)
        {
            body.PutList(0, body.Height, shown.Lines.Length, List, width => [new("", width, i => shown.Lines[i])]);
        }
        else
        {
            FirstStartText.Draw(body, path?.Text);
        }
    }

    private void Try(string from)
    {
        try
        {
            if (Directory.Exists(from))
            {
                CsvImported set = NamedFiles.ReadSet(NamedFiles.FullPath("DIR", from), Sitting.Today);
                tried = (
                    set.Entries,
                    [$"{from}: {set.Entries.Length} entries", .. set.Faults.Select(fault => fault.ToString())]
                );
            }
            else
            {
                BroughtFile brought = BroughtFile.Of(
                    NamedFiles.Table(Sitting.Site, from),
                    Sitting.Shop,
                    Sitting.Units,
                    Sitting.Today,
                    new()
                );
                tried = (
                    brought.What?.Entries ?? [],
                    [.. BroughtText.Of(brought, Sitting.Units).TrimEnd().Split('\n')]
                );
            }

            path = null;
        }
        catch (Exception e) when (e is RefusedException or IOException or UnauthorizedAccessException)
        {
            Sitting.Say(e.Message, Ink.Warn);
        }
    }

    private void Enter(ImmutableArray<LedgerEntry> entries)
    {
        if (entries.IsEmpty)
        {
            Sitting.Say("There is nothing to import. Mend the faults in the table, then press i.", Ink.Warn);
        }
        else if (Sitting.RecordForGood(entries))
        {
            Host.Go(Host.Home);
            Sitting.Say($"{entries.Length} entries imported, {Sitting.Shop.Tools.Count} tools.", Ink.Done);
        }
    }
}
