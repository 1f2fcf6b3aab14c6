namespace ToolWear.Core.Tools;

/// <summary>How many heats a smith says such a tool usually lasts.</summary>
public static class GuessedLife
{
    /// <summary>The guess where nobody gave one, in heats; shown as assumed. Common practice, no source.</summary>
    public const double Assumed = 60;

    /// <summary>The least guess that is taken, heats.</summary>
    public const double Least = 0.5;

    /// <summary>The greatest guess that is taken, heats.</summary>
    public const double Most = 100_000;

    /// <summary>Why a guess cannot be.</summary>
    /// <param name="noun">What it is called where it was typed.</param>
    /// <param name="heats">The guess in heats, or null for none.</param>
    /// <returns>A sentence, or null where it can be.</returns>
    public static string? Refusal(string noun, double? heats) =>
        heats is { } guess && !(guess >= Least && guess <= Most)
            ? $"{noun} {guess}: a number of heats from {Least} to {Most}"
            : null;
}
