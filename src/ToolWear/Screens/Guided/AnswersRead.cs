using ToolWear.Core.Measure;

namespace ToolWear.Screens.Guided;

/// <summary>Reads the answers of a guided entry; the first that is wrong is kept.</summary>
/// <param name="guided">The entry.</param>
internal sealed class AnswersRead(GuidedLine guided)
{
    /// <summary>The question that was answered wrongly and why; null while none was.</summary>
    public (int At, string Why)? Refusal { get; private set; }

    /// <summary>Notes a wrong answer, unless an earlier one was wrong.</summary>
    /// <param name="question">Which, from 0.</param>
    /// <param name="why">What would be right.</param>
    public void Refuse(int question, string why) => Refusal ??= (question, why);

    /// <summary>An answer as text; null where it is empty.</summary>
    /// <param name="question">Which, from 0.</param>
    /// <returns>The text.</returns>
    public string? Text(int question) => guided[question].Trim() is { Length: > 0 } text ? text : null;

    /// <summary>An answer as one of some words; null where it is empty or wrong.</summary>
    /// <typeparam name="T">What the words mean.</typeparam>
    /// <param name="question">Which, from 0.</param>
    /// <param name="words">The words.</param>
    /// <returns>The meaning.</returns>
    public T? Word<T>(int question, Vocabulary<T> words)
        where T : struct, Enum
    {
        if (Text(question) is not { } text)
        {
            return null;
        }

        if (words.TryParse(text, out T value, out string refusal))
        {
            return value;
        }

        Refuse(question, refusal);
        return null;
    }
}
