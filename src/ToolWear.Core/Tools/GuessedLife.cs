namespace ToolWear.Core.Tools;

/// <summary>How many heats a smith says such a tool usually lasts.</summary>
public static class GuessedLife
{
    /// <summary>The guess where nobody gave one, in heats; shown as assumed. Common practice, no source.</summary>
    public const double Assumed = 60;

    /// <summary>Why a guess cannot be.</summary>
    /// <param name="noun">What it is called where it was typed.</param>
    /// <param name="heats">The guess in heats, or null for none.</param>
    /// <returns>A sentence, or null where it can be.</returns>
    public static string? Refusal(string noun, double? heats) =>
        heats is { } guess && !(guess >= 0.5 && guess <= 100_000)
            ? $"{noun} {guess}: a number of heats from 0.5 to 100000"
            : null;
}
