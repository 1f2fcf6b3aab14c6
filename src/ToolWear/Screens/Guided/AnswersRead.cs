using System.Globalization;
using ToolWear.Core.Measure;

namespace ToolWear.Screens.Guided;

/// <summary>Reads the answers of a guided entry; the first that is wrong is kept.</summary>
/// <param name="guided">The entry.</param>
/// <param name="units">The unit of bare sizes.</param>
public sealed class AnswersRead(GuidedLine guided, LengthUnit units)
{
    // as steep as is reckoned with anywhere
    private const decimal SteepestTaper = 0.5m;

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

    /// <summary>An answer as a size; null where it is empty or wrong.</summary>
    /// <param name="question">Which, from 0.</param>
    /// <returns>The size.</returns>
    public Length? Size(int question)
    {
        if (Text(question) is not { } text)
        {
            return null;
        }

        if (SizeText.TryParse(text, units, out TypedSize typed, out string refusal))
        {
            return typed.Length;
        }

        Refuse(question, refusal);
        return null;
    }

    /// <summary>A size that has to be answered; zero where it is not.</summary>
    /// <param name="question">Which, from 0.</param>
    /// <returns>The size.</returns>
    public Length NeedSize(int question)
    {
        if (Size(question) is { } size)
        {
            return size;
        }

        Refuse(question, Words.SizeWanted(guided.Questions[question].Name));
        return Length.Zero;
    }

    /// <summary>An answer as a number; null where it is empty or wrong. A comma is a decimal comma.</summary>
    /// <param name="question">Which, from 0.</param>
    /// <param name="least">The least allowed.</param>
    /// <param name="greatest">The greatest allowed.</param>
    /// <returns>The number.</returns>
    public decimal? Number(int question, decimal least, decimal greatest)
    {
        if (Text(question) is not { } text)
        {
            return null;
        }

        if (
            decimal.TryParse(
                text.Replace(',', '.'),
                NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out decimal number
            )
            && number >= least
            && number <= greatest
        )
        {
            return number;
        }

        Refuse(question, Words.NumberWanted(guided.Questions[question].Name, text, least, greatest));
        return null;
    }

    /// <summary>An answer as a taper, 0 to 0.5 mm per mm; null where it is empty or wrong.</summary>
    /// <param name="question">Which, from 0.</param>
    /// <returns>The taper.</returns>
    public double? Taper(int question) => (double?)Number(question, 0, SteepestTaper);

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

    /// <summary>A size as it is offered: typed back it is the same size to the nanometre.</summary>
    /// <param name="size">The size; null for none.</param>
    /// <param name="units">The unit of bare sizes.</param>
    /// <returns>For example "36.5", "1 7/16" or, in a shop of inches, "36.5 mm".</returns>
    public static string Offer(Length? size, LengthUnit units)
    {
        const long sixtyFourth = Length.NanometresInInch / 64;
        return size is not { } known ? ""
            : units == LengthUnit.Mm ? known.ToMmText()
            : known.Nanometres % sixtyFourth == 0 ? SizeShown.Eye(known, units) + " in"
            : known.ToString();
    }

    /// <summary>A number as it is offered.</summary>
    /// <param name="number">The number; null for none.</param>
    /// <returns>With a point, every digit.</returns>
    public static string Offer(double? number) => number?.ToString("R", CultureInfo.InvariantCulture) ?? "";
}
