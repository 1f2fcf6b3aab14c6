using System.Collections.Immutable;

namespace ToolWear.Screens.Guided;

/// <summary>One question of a guided entry.</summary>
/// <param name="Name">What is asked, in a word or two.</param>
/// <param name="Meaning">A sentence that says what to type.</param>
/// <param name="Choices">The words to choose from; none where anything can be answered.</param>
internal sealed record Question(string Name, string Meaning, ImmutableArray<string> Choices);

/// <summary>Answers questions one after another on one typed line.</summary>
/// <param name="questions">The questions in their order, at least one.</param>
internal sealed class GuidedLine(ImmutableArray<Question> questions)
{
    private readonly string[] answers = [.. questions.Select(_ => "")];

    /// <summary>The questions in their order.</summary>
    public ImmutableArray<Question> Questions => questions;

    /// <summary>Which question is open, from 0.</summary>
    public int At { get; private set; }

    /// <summary>Whether the open question is answered by one of a few words.</summary>
    public bool HasChoice => !questions[At].Choices.IsEmpty;

    /// <summary>The line that is being typed.</summary>
    public TypedLine Line { get; } = new();

    /// <summary>The answer to a question, empty where there is none.</summary>
    /// <param name="question">Which, from 0.</param>
    public string this[int question] => answers[question];

    /// <summary>Puts an answer there that can be taken or typed over.</summary>
    /// <param name="question">Which, from 0.</param>
    /// <param name="answer">The answer.</param>
    public void Offer(int question, string answer)
    {
        answers[question] = answer;
        if (question == At)
        {
            Line.Offer(answer);
        }
    }

    /// <summary>Opens a question.</summary>
    /// <param name="question">Which, from 0.</param>
    public void Go(int question)
    {
        At = question;
        Line.Offer(answers[question]);
    }

    /// <summary>Takes the answer that is typed.</summary>
    /// <returns>True where it was the last question.</returns>
    public bool Next()
    {
        answers[At] = Completed(questions[At].Choices, Line.Text);
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
        ImmutableArray<string> choices = questions[At].Choices;
        if (!choices.IsEmpty)
        {
            int at = choices.IndexOf(Completed(choices, Line.Text));
            Line.Offer(choices[(Math.Max(at, step > 0 ? -1 : 0) + step + choices.Length) % choices.Length]);
        }
    }

    // a beginning stands for the first word that begins so
    private static string Completed(ImmutableArray<string> choices, string typed) =>
        typed.Length > 0 && !choices.Contains(typed, StringComparer.Ordinal)
            ? choices.FirstOrDefault(word => word.StartsWith(typed, StringComparison.OrdinalIgnoreCase)) ?? typed
            : typed;
}
