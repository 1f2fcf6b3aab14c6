using System.Globalization;
using System.Text.RegularExpressions;

namespace ToolWear.Tests.Screens;

/// <summary>Finds words that were cut: those that nobody ever wrote, neither in the program nor in the demo.</summary>
internal static partial class WholeWords
{
    private static readonly HashSet<string> Known = Written();

    /// <summary>The words of a screen that are no whole words and do not end in an ellipsis.</summary>
    /// <param name="screen">Lines.</param>
    /// <returns>The words; what is being typed and paths are passed over.</returns>
    public static IEnumerable<string> CutIn(string screen) =>
        Word()
            .Matches(PassedOver().Replace(screen, match => new string(' ', match.Length)))
            .Where(word => !Known.Contains(word.Value))
            .Where(word => !IsEllipsisAt(screen, word.Index + word.Length) && !IsEllipsisAt(screen, word.Index - 1))
            .Select(word => word.Value);

    private static bool IsEllipsisAt(string screen, int at) => screen.ElementAtOrDefault(at) == '…';

    private static HashSet<string> Written()
    {
        HashSet<string> words = new(
            CultureInfo.InvariantCulture.DateTimeFormat.AbbreviatedDayNames,
            StringComparer.Ordinal
        );
        foreach (
            string file in HouseRules.House.Files("src", "*.cs").Concat(HouseRules.House.Files("seed-data", "*.csv"))
        )
        {
            // \n in a literal is no letter of the next word
            string text = File.ReadAllText(file).Replace("\\n", " ", StringComparison.Ordinal);
            foreach (ValueMatch word in Word().EnumerateMatches(text))
            {
                words.GetAlternateLookup<ReadOnlySpan<char>>().Add(text.AsSpan(word.Index, word.Length));
            }
        }

        return words;
    }

    [GeneratedRegex("[A-Za-z]{2,}")]
    private static partial Regex Word();

    // what is typed ends in the cursor's mark; replaced by as many spaces, so that places stay
    [GeneratedRegex(@"\S*_(?=\s|$)|\S*/\S*", RegexOptions.Multiline)]
    private static partial Regex PassedOver();
}
