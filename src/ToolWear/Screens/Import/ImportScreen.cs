using System.Collections.Immutable;
using ToolWear.Core.Deeds.Bringing;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
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
    private const string Corrects = "The table corrects what the shop has already.";
    private const string Refuses = "What the shop has already is refused.";
    private const string IgnoresUnknown = "Unknown columns: left out.";
    private const string KeepsUnknown = "Unknown columns: kept in the note.";
    private const string RefusesUnknown = "Unknown columns: refused.";
    private const string Nothing = "There is nothing to import. Mend the table; then Esc, and Enter to try again.";
    private const string ImportFrom = "Folder or file to import:";
    private const string NameOne = "Type the name of a file or folder.";
    private const string ColumnsToCarry = "Columns to carry down:";
    private const string DayOfTheRest = "Day of the rows that name none:";

    private readonly TypedLine path = new();
    private readonly TypedLine answer = new();
    private BringingWishes wishes = new();
    private Tried? tried;
    private string[] lines = [];
    private int width = Wrapped.Columns;
    private Act? asked;

    /// <inheritdoc />
    public override ScreenName Name => ScreenName.Import;

    /// <inheritdoc />
    public override string Heading => ImportHeading;

    /// <inheritdoc />
    public override TypedLine? Line =>
        tried is null ? path
        : asked is not null ? answer
        : null;

    /// <inheritdoc />
    protected override int Count => tried is null || asked is not null ? 0 : lines.Length;

    /// <inheritdoc />
    public override bool Has(Need need) => need == Need.Row ? tried?.Table is not null : base.Has(need);

    /// <inheritdoc />
    public override void Open()
    {
        (tried, wishes, asked) = (null, new(), null);
        path.Offer("");
    }

    /// <inheritdoc />
    public override void Do(Act act, int which)
    {
        switch (act)
        {
            case Act.Enter when asked is not null:
                Take(answer.Text.Trim());
                break;
            case Act.Enter when tried is not null:
                Enter(tried);
                break;
            case Act.Enter when path.Text.Trim().Length == 0:
                Sitting.Say(NameOne, Ink.Warn);
                break;
            case Act.Enter:
                Try(wishes, "");
                break;
            case Act.Update:
                Try(wishes with { Update = !wishes.Update }, wishes.Update ? Refuses : Corrects);
                break;
            case Act.LeaveOut:
                Try(
                    wishes with
                    {
                        IgnoreUnknown = !wishes.IgnoreUnknown,
                        KeepUnknown = false,
                    },
                    wishes.IgnoreUnknown ? RefusesUnknown : IgnoresUnknown
                );
                break;
            case Act.KeepUnknown:
                Try(
                    wishes with
                    {
                        IgnoreUnknown = false,
                        KeepUnknown = !wishes.KeepUnknown,
                    },
                    wishes.KeepUnknown ? RefusesUnknown : KeepsUnknown
                );
                break;
            case Act.CarryDown:
                Ask(
                    act,
                    string.Join(',', wishes.CarryDown.IsEmpty ? tried?.Table?.What?.Blanks ?? [] : wishes.CarryDown)
                );
                break;
            case Act.Day:
                Ask(act, $"{wishes.On ?? Sitting.Today:yyyy-MM-dd}");
                break;
            case Act.Back when asked is not null:
                asked = null;
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
        row.Act == Act.Enter && tried is not null && asked is null ? "import" : base.WordsOf(row);

    /// <inheritdoc />
    public override void Compose(Picture body)
    {
        if (tried is null)
        {
            body.PutTyped(body.Put(0, 0, ImportFrom, Ink.Strong) + 1, 0, path.Text);
            return;
        }

        if (width != body.Width)
        {
            width = body.Width;
            Lay(tried);
        }

        int row = 0;
        if (asked is not null)
        {
            string question = asked == Act.Day ? DayOfTheRest : ColumnsToCarry;
            body.PutTyped(body.Put(0, row++, question, Ink.Strong) + 1, 0, answer.Text);
        }

        body.PutList(row, body.Height - row, lines.Length, List, wide => [new("", wide, i => lines[i])]);
    }

    private void Ask(Act what, string offered)
    {
        asked = what;
        answer.Offer(offered);
    }

    private void Take(string typed)
    {
        if (asked == Act.CarryDown)
        {
            Try(wishes with { CarryDown = BringingWishes.Columns(typed) }, "");
        }
        else if (DayText.TryRead(typed, Sitting.Today, out DateOnly day, out string refusal))
        {
            Try(wishes with { On = day }, "");
        }
        else
        {
            Sitting.Say(refusal, Ink.Warn);
            return;
        }

        asked = null;
    }

    // a bar stands beside a long list
    private void Lay(Tried shown) => lines = shown.Text(width - 1).TrimEnd().Split('\n');

    private void Try(BringingWishes wished, string said)
    {
        string from = NamedFiles.Pasted(path.Text);
        try
        {
            if (Directory.Exists(from))
            {
                CsvImported set = NamedFiles.ReadSet(from, Sitting.Shop, Sitting.Today);
                tried = new(null, set.Entries, wide => BroughtText.Of(from, set, wide));
            }
            else
            {
                BroughtFile brought = BroughtFile.Of(
                    NamedFiles.Read(NamedFiles.FullPath("FILE", from)),
                    Sitting.Shop,
                    Sitting.Units,
                    Sitting.Today,
                    wished
                );
                tried = new(brought, brought.What?.Entries ?? [], wide => BroughtText.Of(brought, Sitting.Units, wide));
            }

            wishes = wished;
            Lay(tried);
            List.Choose(0, lines.Length);
            Sitting.Say(said);
        }
        catch (Exception e) when (e is RefusedException or IOException or UnauthorizedAccessException)
        {
            Sitting.Say(e.Message, Ink.Warn);
        }
    }

    private void Enter(Tried shown)
    {
        if (shown.Entries.IsEmpty)
        {
            Sitting.Say(
                shown.Table is { Faults.IsEmpty: true } known ? BroughtText.NothingNew(known) : Nothing,
                Ink.Warn
            );
        }
        else if (Sitting.RecordForGood(shown.Entries))
        {
            Host.Go(Host.Home);
            Sitting.Say(BroughtText.Imported(shown.Entries.Length, Sitting.Shop), Ink.Done);
        }
    }

    /// <summary>What was tried.</summary>
    /// <param name="Table">The table; null for a folder.</param>
    /// <param name="Entries">What can come in.</param>
    /// <param name="Text">What there is to say of it, in lines of so many columns.</param>
    private sealed record Tried(BroughtFile? Table, ImmutableArray<LedgerEntry> Entries, Func<int, string> Text);
}
