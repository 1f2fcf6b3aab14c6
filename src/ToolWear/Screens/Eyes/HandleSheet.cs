using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Screens.Drawing;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.Eyes;

/// <summary>A handle that is being entered or changed.</summary>
public sealed class HandleSheet : GuidedEntry
{
    private const int Long = 0;
    private const int Wide = 1;
    private const int Tapers = 2;
    private const int Seat = 3;
    private const int Note = 4;
    private const int Name = 5;

    private readonly HandleDescribed? before;

    private HandleSheet(HandleDescribed? before)
        : base(new GuidedLine(before is null ? Questions : Questions[..Name])) => this.before = before;

    /// <inheritdoc />
    public override string Heading => before is null ? Words.NewHandleHeading : Words.ChangeHandleHeading(before.Name);

    /// <inheritdoc />
    public override string Below => Words.EyeCaution;

    /// <summary>The handle that was entered; null before.</summary>
    public HandleDescribed? Handle { get; private set; }

    /// <summary>Whether it is a new one.</summary>
    public bool IsNew => before is null;

    /// <summary>A new handle.</summary>
    /// <returns>The sheet.</returns>
    public static HandleSheet New() => new(null);

    /// <summary>A change of a handle.</summary>
    /// <param name="units">The unit of sizes offered.</param>
    /// <param name="handle">The handle as it is.</param>
    /// <returns>The sheet.</returns>
    public static HandleSheet Change(LengthUnit units, HandleDescribed handle)
    {
        HandleSheet sheet = new(handle);
        sheet.Guided.Offer(Long, AnswersRead.Offer(handle.Length, units));
        sheet.Guided.Offer(Wide, AnswersRead.Offer(handle.Width, units));
        sheet.Guided.Offer(Tapers, AnswersRead.Offer(handle.Taper));
        sheet.Guided.Offer(Seat, AnswersRead.Offer(handle.SeatTolerance, units));
        sheet.Guided.Offer(Note, handle.Note ?? "");
        return sheet;
    }

    /// <inheritdoc />
    public override bool Take(AnswersRead read, Sitting sitting)
    {
        HandleDescribed handle = new(
            before?.Name ?? read.Text(Name) ?? "",
            read.NeedSize(Long),
            read.NeedSize(Wide),
            read.Taper(Tapers),
            read.Size(Seat),
            read.Text(Note)
        );
        if (before is null && sitting.Shop.Handles.ContainsKey(handle.Name))
        {
            read.Refuse(Name, Words.HandleThere(handle.Name));
        }
        else if (handle.Name.Length == 0)
        {
            read.Refuse(Name, Words.NameWanted);
        }

        if (read.Refusal is not null || !sitting.Record(handle))
        {
            return false;
        }

        Handle = handle;
        sitting.Say(Words.HandleEntered(handle.Name), Ink.Done);
        return true;
    }

    private static ImmutableArray<Question> Questions { get; } =
    [
        new("Length", Words.AskHandleLength, []),
        new("Width", Words.AskHandleWidth, []),
        new("Taper", Words.AskHandleTaper, []),
        new("Seat either way", Words.AskSeat, []),
        new("Note", Words.AskNote, []),
        new("Name", Words.AskHandleName, []),
    ];
}
