using System.Collections.Frozen;
using System.Globalization;
using System.Text;

namespace ToolWear.Core.Measure;

/// <summary>Brings texts to normal form C, so that one letter typed in two ways is one letter.</summary>
/// <remarks>
/// The process keeps its cultures invariant (no library of the system is asked), and string.Normalize then returns every
/// text as it is. So the form is made here: canonical decomposition, canonical order, canonical composition, Unicode
/// Standard Annex 15 and section 3.11 of the Unicode Standard, with its arithmetic of Hangul syllables (3.12).
/// </remarks>
public static partial class NormalFormC
{
    private const int SBase = 0xAC00;
    private const int LBase = 0x1100;
    private const int VBase = 0x1161;
    private const int TBase = 0x11A7;
    private const int LCount = 19;
    private const int VCount = 21;
    private const int TCount = 28;
    private const int SCount = LCount * VCount * TCount;

    private static readonly Lazy<Tables> Made = new(Tables.Read);

    /// <summary>The text in normal form C.</summary>
    /// <param name="text">A text without lone surrogates.</param>
    /// <returns>The same text where nothing was to do, as in all texts below U+0300.</returns>
    public static string Of(string text)
    {
        if (!text.AsSpan().ContainsAnyInRange('\u0300', '\uFFFF'))
        {
            return text;
        }

        List<int> runes = [];
        foreach (Rune rune in text.EnumerateRunes())
        {
            Decompose(rune.Value, runes);
        }

        Order(runes);
        StringBuilder written = new(text.Length);
        foreach (int rune in Composed(runes))
        {
            _ = written.Append(new Rune(rune).ToString());
        }

        return written.ToString();
    }

    private static void Decompose(int c, List<int> into)
    {
        if (c - SBase is >= 0 and < SCount)
        {
            int s = c - SBase;
            into.Add(LBase + (s / (VCount * TCount)));
            into.Add(VBase + (s % (VCount * TCount) / TCount));
            if (s % TCount > 0)
            {
                into.Add(TBase + (s % TCount));
            }
        }
        else if (Made.Value.Parts.TryGetValue(c, out int[]? parts))
        {
            foreach (int part in parts)
            {
                Decompose(part, into);
            }
        }
        else
        {
            into.Add(c);
        }
    }

    /// <summary>Sorts each run of combining characters by their classes; equals stay as they came.</summary>
    private static void Order(List<int> runes)
    {
        for (int i = 1; i < runes.Count; i++)
        {
            int rune = runes[i];
            int at = i;
            while (at > 0 && Class(rune) > 0 && Class(runes[at - 1]) > Class(rune))
            {
                runes[at] = runes[at - 1];
                at--;
            }

            runes[at] = rune;
        }
    }

    private static List<int> Composed(List<int> runes)
    {
        List<int> composed = [];
        int starter = -1;
        int lastClass = 0;
        foreach (int rune in runes)
        {
            int own = Class(rune);
            bool isNext = starter == composed.Count - 1;
            if (starter >= 0 && (isNext || lastClass < own) && Pair(composed[starter], rune) is { } one)
            {
                composed[starter] = one;
                continue;
            }

            starter = own == 0 ? composed.Count : starter;
            lastClass = own;
            composed.Add(rune);
        }

        return composed;
    }

    private static int? Pair(int first, int second)
    {
        if (first - LBase is >= 0 and < LCount && second - VBase is >= 0 and < VCount)
        {
            return SBase + ((((first - LBase) * VCount) + (second - VBase)) * TCount);
        }

        bool isOpenSyllable = first - SBase is >= 0 and < SCount && (first - SBase) % TCount == 0;
        return isOpenSyllable && second - TBase is > 0 and < TCount ? first + (second - TBase)
            : Made.Value.Pairs.TryGetValue((first, second), out int one) ? one
            : null;
    }

    private static int Class(int rune) => Made.Value.Classes.GetValueOrDefault(rune);

    private sealed record Tables(
        FrozenDictionary<int, int[]> Parts,
        FrozenDictionary<(int First, int Second), int> Pairs,
        FrozenDictionary<int, int> Classes
    )
    {
        private static readonly char[] Blanks = [' ', '\n', '\r'];

        public static Tables Read()
        {
            Dictionary<int, int[]> parts = [];
            Dictionary<(int First, int Second), int> pairs = [];
            foreach (string each in Decompositions.Split(Blanks, StringSplitOptions.RemoveEmptyEntries))
            {
                int at = each.IndexOfAny(['=', ':']);
                int whole = Hex(each[..at]);
                parts[whole] = [.. each[(at + 1)..].Split('+').Select(Hex)];
                if (each[at] == '=')
                {
                    pairs[(parts[whole][0], parts[whole][1])] = whole;
                }
            }

            Dictionary<int, int> classes = [];
            foreach (string each in NormalFormC.Classes.Split(Blanks, StringSplitOptions.RemoveEmptyEntries))
            {
                string[] halves = each.Split('=');
                int[] ends = [.. halves[0].Split('-').Select(Hex)];
                for (int rune = ends[0]; rune <= ends[^1]; rune++)
                {
                    classes[rune] = int.Parse(halves[1], CultureInfo.InvariantCulture);
                }
            }

            return new(parts.ToFrozenDictionary(), pairs.ToFrozenDictionary(), classes.ToFrozenDictionary());
        }

        private static int Hex(string digits) =>
            int.Parse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
    }
}
