using System.Collections.Frozen;
using System.Globalization;
using System.Text;

namespace ToolWear.Storage.Csv;

/// <summary>Brings text to the normal form C, so that an Ä is one character however it was typed.</summary>
/// <remarks>
/// <c>string.Normalize</c> does nothing where globalization is invariant, as it is here. The steps are those of Unicode
/// Standard Annex 15: full canonical decomposition, canonical order of the combining marks, composition. Hangul by the
/// formulas of the Unicode Standard, section 3.12.
/// </remarks>
public static class NormalFormC
{
    private const int SBase = 0xAC00;
    private const int LBase = 0x1100;
    private const int VBase = 0x1161;
    private const int TBase = 0x11A7;
    private const int LCount = 19;
    private const int VCount = 21;
    private const int TCount = 28;
    private const int SCount = LCount * VCount * TCount;

    /// <summary>The first character that can take part in a change; below it every text is in the form.</summary>
    private const char FirstThatMatters = '\u0300';

    private static readonly Lazy<Tables> Known = new(Tables.Read);

    /// <summary>The text in normal form C.</summary>
    /// <param name="text">A text of whole characters, without lone surrogates.</param>
    /// <returns>The same text where it is in the form already.</returns>
    public static string Of(string text)
    {
        if (!text.AsSpan().ContainsAnyInRange(FirstThatMatters, char.MaxValue))
        {
            return text;
        }

        List<int> points = [];
        foreach (Rune rune in text.EnumerateRunes())
        {
            Decompose(rune.Value, points);
        }

        Order(points);
        Compose(points);
        StringBuilder composed = new(text.Length);
        foreach (int point in points)
        {
            composed.Append(new Rune(point));
        }

        return composed.ToString();
    }

    private static void Decompose(int point, List<int> points)
    {
        int syllable = point - SBase;
        if (syllable is >= 0 and < SCount)
        {
            points.Add(LBase + (syllable / (VCount * TCount)));
            points.Add(VBase + (syllable % (VCount * TCount) / TCount));
            if (syllable % TCount > 0)
            {
                points.Add(TBase + (syllable % TCount));
            }
        }
        else if (Known.Value.Decompositions.TryGetValue(point, out int[]? parts))
        {
            foreach (int part in parts)
            {
                Decompose(part, points);
            }
        }
        else
        {
            points.Add(point);
        }
    }

    /// <summary>Sorts each run of combining marks by class, keeping the order within a class.</summary>
    private static void Order(List<int> points)
    {
        for (int i = 1; i < points.Count; i++)
        {
            int mark = Class(points[i]);
            for (int j = i; mark > 0 && j > 0 && Class(points[j - 1]) > mark; j--)
            {
                (points[j - 1], points[j]) = (points[j], points[j - 1]);
            }
        }
    }

    private static void Compose(List<int> points)
    {
        int starter = -1;
        int kept = 0;
        int lastClass = -1;
        for (int i = 0; i < points.Count; i++)
        {
            int point = points[i];
            int mark = Class(point);
            bool isBlocked = lastClass >= mark && lastClass != -1;
            if (starter >= 0 && !isBlocked && Pair(points[starter], point) is { } composite)
            {
                points[starter] = composite;
                continue;
            }

            if (mark == 0)
            {
                starter = kept;
            }

            lastClass = mark == 0 ? -1 : mark;
            points[kept++] = point;
        }

        points.RemoveRange(kept, points.Count - kept);
    }

    private static int? Pair(int first, int second)
    {
        int l = first - LBase;
        int v = second - VBase;
        if (l is >= 0 and < LCount && v is >= 0 and < VCount)
        {
            return SBase + (((l * VCount) + v) * TCount);
        }

        int syllable = first - SBase;
        int t = second - TBase;
        if (syllable is >= 0 and < SCount && syllable % TCount == 0 && t is > 0 and < TCount)
        {
            return first + t;
        }

        return Known.Value.Composites.TryGetValue((first, second), out int composite) ? composite : null;
    }

    private static int Class(int point) => Known.Value.Classes.GetValueOrDefault(point);

    private sealed record Tables(
        FrozenDictionary<int, int> Classes,
        FrozenDictionary<int, int[]> Decompositions,
        FrozenDictionary<(int First, int Second), int> Composites
    )
    {
        private static readonly char[] Breaks = [' ', '\n', '\r'];

        public static Tables Read()
        {
            Dictionary<int, int> classes = [];
            foreach (string run in Words(CanonicalMappings.Classes))
            {
                string[] parts = run.Split('-', ':');
                for (int point = Point(parts[0]); point <= Point(parts[1]); point++)
                {
                    classes[point] = int.Parse(parts[2], CultureInfo.InvariantCulture);
                }
            }

            Dictionary<int, int[]> decompositions = [];
            Dictionary<(int First, int Second), int> composites = [];
            foreach (string mapping in Words(CanonicalMappings.Decompositions))
            {
                int[] points = [.. mapping.Split('=', '~', '+').Select(Point)];
                decompositions[points[0]] = points[1..];
                if (mapping.Contains('=', StringComparison.Ordinal))
                {
                    composites[(points[1], points[2])] = points[0];
                }
            }

            return new(
                classes.ToFrozenDictionary(),
                decompositions.ToFrozenDictionary(),
                composites.ToFrozenDictionary()
            );
        }

        private static string[] Words(string text) => text.Split(Breaks, StringSplitOptions.RemoveEmptyEntries);

        private static int Point(string text) =>
            int.Parse(text, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
    }
}
