using System.Collections.Immutable;
using ToolWear.Core.Deeds.Bringing;
using ToolWear.Core.Ledger;
using ToolWear.Doors;
using ToolWear.Keys;
using ToolWear.Pens;
using ToolWear.Results.Looks;
using ToolWear.Screens.Drawing;
using ToolWear.Storage.Csv;

namespace ToolWear.Screens.Import;

/// <summary>A table or folder that someone brings: it is tried first, then comes in with one key.</summary>
/// <param name="host">Where it is shown.</param>
internal sealed class ImportScreen(Host host) : Screen(host)
{
    private const string ImportHeading = "Import a table";
    private const string ImportFrom = "Folder or file to import:";

    private readonly TypedLine path = new();
    private BringingWishes wishes = new();
    private (ImmutableArray<LedgerEntry> Entries, ImmutableArray<string> Lines)? tried;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Import;

    /// <inheritdoc />
    public override string Heading => ImportHeading;

    /// <inheritdoc />
    public override TypedLine? Line => tried is null ? path : null;

    /// <inheritdoc />
    protected override int Count => tried?.Lines.Length ?? 0;

    /// <inheritdoc />
    public override void Open()
    {
        (tried, wishes) = (null, new());
        path.Offer("");
    }

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Enter when tried is { Entries: var sound }:
                Enter(sound);
                break;
            case Act.Enter:
                Try();
                break;
            case Act.Update:
                wishes = wishes with { Update = !wishes.Update };
                Try();
                break;
            case Act.LeaveOut:
                wishes = wishes with { IgnoreUnknown = !wishes.IgnoreUnknown };
                Try();
                break;
            case Act.Back when tried is not null:
                tried = null;
                path.Offer(path.Text);
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
            body.PutTyped(body.Put(0, 0, ImportFrom, Ink.Strong) + 1, 0, path.Text);
        }
    }

    private void Try()
    {
        string from = path.Text.Trim();
        try
        {
            if (Directory.Exists(from))
            {
                CsvImported set = NamedFiles.ReadSet(from, Sitting.Shop, Sitting.Today);
                tried = (
                    set.Entries,
                    [$"{from}: {set.Entries.Length} entries", .. set.Faults.Select(fault => fault.ToString())]
                );
            }
            else
            {
                BroughtFile brought = BroughtFile.Of(
                    NamedFiles.Read(NamedFiles.FullPath("FILE", from)),
                    Sitting.Shop,
                    Sitting.Units,
                    Sitting.Today,
                    wishes
                );
                tried = (
                    brought.What?.Entries ?? [],
                    [.. BroughtText.Of(brought, Sitting.Units).TrimEnd().Split('\n')]
                );
            }
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
            Sitting.Say("There is nothing to import. Mend the table; then Esc, and Enter to try again.", Ink.Warn);
        }
        else if (Sitting.RecordForGood(entries))
        {
            Host.Go(Host.Home);
            Sitting.Say($"{entries.Length} entries imported, {Sitting.Shop.Tools.Count} tools.", Ink.Done);
        }
    }
}
