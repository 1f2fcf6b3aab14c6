using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>A text of which every number has to be explained: what is explained is taken out, and nothing may be left.</summary>
/// <remarks>Line ends and runs of spaces count as one space.</remarks>
internal sealed partial class Numbers
{
    private readonly StringBuilder left;
    private readonly int from;
    private readonly int length;
    private readonly string where;

    public Numbers(string text, string where)
        : this(new StringBuilder(Spaces().Replace(text, " ").Trim()), 0, -1, where) { }

    private Numbers(StringBuilder left, int from, int length, string where)
    {
        (this.left, this.from, this.where) = (left, from, where);
        this.length = length < 0 ? left.Length : length;
    }

    /// <summary>The text as far as it is not explained.</summary>
    public string Left => left.ToString(from, length);

    /// <summary>A number as a screen rounds it, worked out here apart from the program.</summary>
    public static string Rounded(double value, int places)
    {
        decimal rounded = decimal.Round((decimal)value, places, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString(
            "F" + places.ToString(CultureInfo.InvariantCulture),
            CultureInfo.InvariantCulture
        );
    }

    /// <summary>Heats as worked: at most one decimal.</summary>
    public static string Heats(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Takes a text out that must be there, word for word.</summary>
    public void TakeText(string exact)
    {
        string wanted = Spaces().Replace(exact, " ").Trim();
        int at = Left.IndexOf(wanted, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{where}: \"{wanted}\" is not there:\n{Left}");
        Blank(at, wanted.Length);
    }

    /// <summary>Takes every match out; its groups must be what is expected of them. A group that did not match is passed over.</summary>
    /// <returns>How many there were.</returns>
    public int Take(string pattern, params (string Group, string Expected)[] groups)
    {
        MatchCollection matches = Regex.Matches(
            Left,
            pattern.Replace("#", @"-?\d+(?:\.\d+)?", StringComparison.Ordinal),
            RegexOptions.None,
            TimeSpan.FromSeconds(5)
        );
        foreach (Match match in matches)
        {
            foreach ((string group, string expected) in groups.Where(each => match.Groups[each.Group].Success))
            {
                Assert.True(
                    expected == match.Groups[group].Value,
                    $"{where}: {group} is {match.Groups[group].Value}, expected {expected} in \"{match.Value}\""
                );
            }

            Blank(match.Index, match.Length);
        }

        return matches.Count;
    }

    /// <summary>Takes every number out that is one of some figures, rounded to as many decimals as it shows.</summary>
    public void TakeAnyOf(IReadOnlyCollection<double> figures)
    {
        foreach (Match match in Number().Matches(Left))
        {
            int point = match.Value.IndexOf('.', StringComparison.Ordinal);
            int places = point < 0 ? 0 : match.Value.Length - point - 1;
            double shown = Math.Abs(double.Parse(match.Value, CultureInfo.InvariantCulture));
            // a tie may be rounded either way
            double half = (0.5 * Math.Pow(10, -places)) + 1e-9;
            bool isOne = figures.Any(figure => Math.Abs(Math.Abs(figure) - shown) <= half);
            if (isOne)
            {
                Blank(match.Index, match.Length);
            }
        }
    }

    /// <summary>A part of the text; what is explained there is explained here.</summary>
    public Numbers Part(int begin, int end, string of) => new(left, from + begin, end - begin, of);

    /// <summary>Nothing is left that holds a digit.</summary>
    public void MustBeExplained() =>
        Assert.True(!Digit().IsMatch(Left), $"{where}: numbers that nothing explains:\n{Spaces().Replace(Left, " ")}");

    private void Blank(int at, int count)
    {
        for (int i = at; i < at + count; i++)
        {
            left[from + i] = ' ';
        }
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"\d")]
    private static partial Regex Digit();

    [GeneratedRegex(@"(?<![\w.])-?\d+(?:\.\d+)?(?![\w])")]
    private static partial Regex Number();
}
