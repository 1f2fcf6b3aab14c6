using System.Collections.Immutable;
using ToolWear.Screens.Guided;

namespace ToolWear.Screens.ToolTable;

/// <summary>Answers a sheet question by question.</summary>
/// <param name="questions">The questions in their order.</param>
internal sealed class SheetLine(ImmutableArray<Asked> questions)
{
    /// <summary>The questions in their order.</summary>
    public ImmutableArray<Asked> Questions => questions;

    /// <summary>The questions and answers as they are typed.</summary>
    public GuidedLine Guided { get; } =
        new([
            .. questions.Select(asked => new Question(
                ToolTableText.Column(asked),
                ToolTableText.Question(asked),
                ToolSheet.Choices(asked)
            )),
        ]);

    /// <summary>The sheet so far.</summary>
    public ToolSheet Sheet { get; private set; } = ToolSheet.Empty;

    /// <summary>Which question is open, from 0.</summary>
    public int At => Guided.At;

    /// <summary>The open question.</summary>
    public Asked Asked => questions[At];

    /// <summary>The line that is being typed.</summary>
    public TypedLine Line => Guided.Line;

    /// <summary>Begins with a sheet.</summary>
    /// <param name="sheet">The sheet; its answers are offered.</param>
    public void Begin(ToolSheet sheet)
    {
        Sheet = sheet;
        for (int i = 0; i < questions.Length; i++)
        {
            Guided.Offer(i, sheet[questions[i]]);
        }

        Guided.Go(0);
    }

    /// <summary>Opens a question.</summary>
    /// <param name="asked">Which.</param>
    public void Go(Asked asked) => Guided.Go(questions.IndexOf(asked));

    /// <summary>Puts an answer there that can be taken or typed over.</summary>
    /// <param name="asked">The question.</param>
    /// <param name="answer">The answer.</param>
    public void Offer(Asked asked, string answer) => Guided.Offer(questions.IndexOf(asked), answer);

    /// <summary>Takes the answer that is typed.</summary>
    /// <returns>True where it was the last question.</returns>
    public bool Next()
    {
        int at = At;
        bool isLast = Guided.Next();
        Sheet = Sheet.With(questions[at], Guided[at]);
        return isLast;
    }

    /// <summary>Goes a question back.</summary>
    /// <returns>True where there was one.</returns>
    public bool Back() => Guided.Back();

    /// <summary>Offers the next word of a choice, or the one before.</summary>
    /// <param name="step">1 or -1.</param>
    public void Choose(int step) => Guided.Choose(step);
}
