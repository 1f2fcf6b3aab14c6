using System.Buffers;
using System.Text;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Storage.Journal;

namespace ToolWear.Storage.Entries;

/// <summary>Goes through an entry that stands exactly as <see cref="EntryFormat.Write"/> writes it; at the first thing otherwise it gives up.</summary>
/// <remarks>It takes a part of what JSON allows, and of that each thing for what the reader of JSON takes it for.</remarks>
/// <param name="text">The entry in UTF-8.</param>
internal ref struct WrittenForm(ReadOnlySpan<byte> text)
{
    private const int LongestWord = 64;
    private const int LongestDay = 10;
    private const int MostDigits = 9;
    private const int DigitsOfNanometres = 6;

    // ASCII that stands in a text of JSON as it is
    private static readonly SearchValues<byte> Plain = SearchValues.Create([
        .. Enumerable.Range(' ', '~' - ' ' + 1).Select(c => (byte)c).Where(c => c is not ((byte)'"' or (byte)'\\')),
    ]);

    private ReadOnlySpan<byte> _rest = text;

    /// <summary>Steps over what must stand next.</summary>
    /// <param name="expected">What must stand there.</param>
    /// <returns>False where it does not: then nothing was stepped over.</returns>
    internal bool Take(ReadOnlySpan<byte> expected)
    {
        bool isThere = _rest.StartsWith(expected);
        _rest = isThere ? _rest[expected.Length..] : _rest;
        return isThere;
    }

    /// <summary>Steps over the end of an entry.</summary>
    /// <returns>True where nothing stands behind it.</returns>
    internal bool TakeEnd() => Take("}}"u8) && _rest.IsEmpty;

    /// <summary>Reads a text up to its quotation mark.</summary>
    /// <param name="text">The text.</param>
    /// <returns>False where there is more in it than plain letters.</returns>
    internal bool TryText(out string text)
    {
        bool isPlain = TryPlain(out ReadOnlySpan<byte> letters);
        text = isPlain ? TextJson.Texts.Of(letters) : "";
        return isPlain;
    }

    /// <summary>Reads a mark up to its quotation mark.</summary>
    /// <param name="mark">The mark.</param>
    /// <returns>False where there is more in it than plain letters.</returns>
    /// <exception cref="System.Text.Json.JsonException">It can be no mark.</exception>
    internal bool TryMark(out ToolMark mark)
    {
        bool isPlain = TryPlain(out ReadOnlySpan<byte> letters);
        mark = isPlain ? ToolMarkJson.Marks.Of(letters) : default;
        return isPlain;
    }

    /// <summary>Reads a word of a list up to its quotation mark.</summary>
    /// <param name="words">The list.</param>
    /// <param name="value">The word's value.</param>
    /// <returns>False where it is none of them.</returns>
    /// <typeparam name="T">The values of the list.</typeparam>
    internal bool TryWord<T>(Vocabulary<T> words, out T value)
        where T : struct, Enum
    {
        value = default;
        if (!TryPlain(out ReadOnlySpan<byte> letters) || letters.Length > LongestWord)
        {
            return false;
        }
        Span<char> word = stackalloc char[LongestWord];
        return words.TryParse(word[..Encoding.ASCII.GetChars(letters, word)], out value, out _);
    }

    /// <summary>Reads a day up to its quotation mark.</summary>
    /// <param name="day">The day.</param>
    /// <returns>False where it is none.</returns>
    internal bool TryDay(out DateOnly day)
    {
        day = default;
        return TryPlain(out ReadOnlySpan<byte> letters)
            && letters.Length == LongestDay
            && JournalFormat.TryDay(letters, out day);
    }

    /// <summary>Reads a length in millimetres with no more digits than make whole nanometres.</summary>
    /// <param name="length">The length.</param>
    /// <returns>False where it stands otherwise.</returns>
    internal bool TryLength(out Length length)
    {
        length = default;
        if (!TryNumber(out long digits, out int behindThePoint) || behindThePoint > DigitsOfNanometres)
        {
            return false;
        }
        long nanometres = digits;
        for (int i = behindThePoint; i < DigitsOfNanometres; i++)
        {
            nanometres *= 10;
        }
        length = new Length(nanometres);
        return true;
    }

    /// <summary>Reads heats, whole or with a half.</summary>
    /// <param name="heats">The heats.</param>
    /// <returns>False where they stand otherwise.</returns>
    internal bool TryHeats(out Heats heats)
    {
        heats = default;
        if (
            !TryNumber(out long digits, out int behindThePoint)
            || !(behindThePoint == 0 || (behindThePoint == 1 && digits % 10 is 0 or 5))
        )
        {
            return false;
        }
        heats = Heats.OfHalves((int)(behindThePoint == 0 ? digits * 2 : digits / 5));
        return true;
    }

    private bool TryPlain(out ReadOnlySpan<byte> letters)
    {
        int end = _rest.IndexOfAnyExcept(Plain);
        if (end < 0 || _rest[end] != (byte)'"')
        {
            letters = default;
            return false;
        }
        letters = _rest[..end];
        _rest = _rest[(end + 1)..];
        return true;
    }

    // a number of JSON without sign and exponent, of few enough digits that no arithmetic here comes near its ends
    private bool TryNumber(out long digits, out int behindThePoint)
    {
        digits = 0;
        int point = -1;
        int at = 0;
        for (; at < _rest.Length && at <= MostDigits; at++)
        {
            if (_rest[at] == (byte)'.' && point < 0 && at > 0)
            {
                point = at;
            }
            else if (_rest[at] is >= (byte)'0' and <= (byte)'9')
            {
                digits = (digits * 10) + (_rest[at] - '0');
            }
            else
            {
                break;
            }
        }
        behindThePoint = point < 0 ? 0 : at - point - 1;
        bool hasZeroBefore = at > 1 && _rest[0] == (byte)'0' && point != 1;
        bool isWhole = at > 0 && at <= MostDigits && !hasZeroBefore && (point < 0 || behindThePoint > 0);
        _rest = isWhole ? _rest[at..] : _rest;
        return isWhole;
    }
}
