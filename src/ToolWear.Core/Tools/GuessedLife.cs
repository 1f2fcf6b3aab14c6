using System.Collections.Immutable;

namespace ToolWear.Core.Tools;

/// <summary>How many heats a smith says such a tool usually lasts.</summary>
public static class GuessedLife
{
    /// <summary>The guess where not even the form of tool is known, in heats; shown as assumed. Common practice, no source.</summary>
    public const double Assumed = 60;

    /// <summary>First guesses by place of a drift, else by form, in heats: of mild steel, of one that hardens in oil or
    /// water, of one that hardens in air. Common practice, no source; the shop may change each.</summary>
    public static ImmutableArray<(string Of, string Usual)> Firsts { get; } =
    [
        ("opener", "110 110 150"),
        ("rough", "27 60 90"),
        ("second", "40 100 150"),
        ("finish", "80 200 290"),
        ("drift", "27 60 90"),
        ("slitter", "40 120 200"),
        ("slot punch", "40 120 200"),
        ("punch", "40 120 200"),
        ("fuller", "60 150 200"),
        ("flatter", "200 400 600"),
        ("swage", "100 200 300"),
        ("hot cut", "60 150 250"),
        ("cut-off", "60 150 250"),
        ("die", "300 800 1500"),
        ("bolster", "300 600 1000"),
        ("other", "27 60 90"),
    ];

    /// <summary>Which of <see cref="Firsts"/> speaks of a tool.</summary>
    /// <param name="form">Its form.</param>
    /// <param name="place">Its place in the series.</param>
    /// <returns>The place where it has one, else the form.</returns>
    public static string FirstOf(ToolForm form, Place place) =>
        place == Place.None ? form.Name : Places.Words.Word(place);

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
