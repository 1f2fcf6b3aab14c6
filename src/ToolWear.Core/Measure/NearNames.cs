namespace ToolWear.Core.Measure;

/// <summary>What was probably meant by a name that nothing has, and which names there are.</summary>
public static class NearNames
{
    // more than these nobody reads
    private const int Listed = 15;
    private const int MostMeant = 3;

    /// <summary>Refuses a name: what is wrong, then what would be right.</summary>
    /// <param name="noun">What the name is of: "tool".</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="known">The names there are, in the order in which they are listed.</param>
    /// <returns>"No tool "h5". Did you mean H5?"</returns>
    public static string Refusal(string noun, string typed, IEnumerable<string> known) =>
        $"No {noun} \"{FreeText.Shown(typed)}\". {Hint(typed, known)}";

    /// <summary>Says what was probably meant, else which names there are, cut where there are many.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="known">The names there are, in the order in which they are listed.</param>
    /// <returns>A sentence.</returns>
    public static string Hint(string typed, IEnumerable<string> known)
    {
        string[] all = [.. known.Distinct(StringComparer.Ordinal)];
        string listed = string.Join(", ", all.Take(Listed));
        return Meant(typed, all) is { Length: > 0 } meant ? meant
            : all.Length == 0 ? "None is entered yet."
            : all.Length > Listed ? $"There are {listed} and {all.Length - Listed} more."
            : all.Length == 1 ? $"The only one is {listed}."
            : $"There are {listed}.";
    }

    /// <summary>Asks for what was probably meant.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="known">The names there are.</param>
    /// <returns>"Did you mean H5?"; empty where nothing is near.</returns>
    public static string Meant(string typed, IEnumerable<string> known)
    {
        (string Name, int Away)[] near =
        [
            .. known
                .Select(name => (Name: name, Away: Away(typed.ToUpperInvariant(), name.ToUpperInvariant())))
                .Where(each => each.Away <= Math.Min(typed.Length / 3, 3))
                .OrderBy(each => each.Away),
        ];
        return near.Length == 0
            ? ""
            : $"Did you mean {string.Join(" or ", near.TakeWhile(each => each.Away == near[0].Away).Take(MostMeant).Select(each => each.Name))}?";
    }

    /// <summary>How many signs were left out, put in, changed or swapped; a beginning is one away.</summary>
    private static int Away(string typed, string name)
    {
        if (typed.Length > 2 && name.StartsWith(typed, StringComparison.Ordinal))
        {
            return typed.Length == name.Length ? 0 : 1;
        }

        if (Math.Abs(typed.Length - name.Length) > 3)
        {
            return int.MaxValue;
        }

        int[][] away = [.. Enumerable.Range(0, typed.Length + 1).Select(_ => new int[name.Length + 1])];
        for (int i = 0; i <= typed.Length; i++)
        {
            for (int j = 0; j <= name.Length; j++)
            {
                away[i][j] =
                    i * j == 0
                        ? i + j
                        : Math.Min(
                            Math.Min(away[i - 1][j], away[i][j - 1]) + 1,
                            away[i - 1][j - 1] + (typed[i - 1] == name[j - 1] ? 0 : 1)
                        );
                if (i > 1 && j > 1 && typed[i - 1] == name[j - 2] && typed[i - 2] == name[j - 1])
                {
                    away[i][j] = Math.Min(away[i][j], away[i - 2][j - 2] + 1);
                }
            }
        }

        return away[^1][^1];
    }
}
