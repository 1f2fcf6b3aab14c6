using System.Collections.Immutable;

namespace ToolWear.Screens.ToolTable;

/// <summary>Answers a sheet question by question.</summary>
/// <param name="questions">The questions in their order.</param>
public sealed class SheetLine(ImmutableArray<Asked> questions)
{
    private readonly TypedLine line = new();

    /// <summary>The questions in their order.</summary>
    public ImmutableArray<Asked> Questions => questions;

    /// <summary>The sheet so far.</summary>
    public ToolSheet Sheet { get; private set; } = ToolSheet.Empty;

    /// <summary>Which question is open, from 0.</summary>
    public int At { get; private set; }

    /// <summary>The open question.</summary>
    public Asked Asked => questions[At];

    /// <summary>Whether the answer is one of a few words.</summary>
    public bool HasChoice => !ToolSheet.Choices(Asked).IsEmpty;

    /// <summary>The line that is being typed.</summary>
    public TypedLine Line => line;

    /// <summary>Begins with a sheet.</summary>
    /// <param name="sheet">The sheet; its answers are offered.</param>
    public void Begin(ToolSheet sheet)
    {
        Sheet = sheet;
        Go(0);
    }

    /// <summary>Opens a question.</summary>
    /// <param name="asked">Which.</param>
    public void Go(Asked asked) => Go(questions.IndexOf(asked));

    /// <summary>Takes the answer that is typed.</summary>
    /// <returns>True where it was the last question.</returns>
    public bool Next()
    {
        Sheet = Sheet.With(Asked, ToolSheet.Completed(Asked, line.Text));
        if (At == questions.Length - 1)
        {
            return true;
        }

        Go(At + 1);
        return false;
    }

    /// <summary>Goes a question back.</summary>
    /// <returns>True where there was one.</returns>
    public bool Back()
    {
        if (At == 0)
        {
            return false;
        }

        Go(At - 1);
        return true;
    }

    /// <summary>Offers the next word of a choice, or the one before.</summary>
    /// <param name="step">1 or -1.</param>
    public void Choose(int step)
    {
        ImmutableArray<string> choices = ToolSheet.Choices(Asked);
        if (!choices.IsEmpty)
        {
            int at = choices.IndexOf(ToolSheet.Completed(Asked, line.Text));
            line.Offer(choices[(Math.Max(at, step > 0 ? -1 : 0) + step + choices.Length) % choices.Length]);
        }
    }

    private void Go(int at)
    {
        At = at;
        line.Offer(Sheet[Asked]);
    }
}
