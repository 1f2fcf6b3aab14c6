using System.Collections.Immutable;
using ToolWear.Core.Ledger;
using ToolWear.Core.Planning.Years;
using ToolWear.Results.Tools;
using ToolWear.Wording;
using Row = ToolWear.Results.Column<ToolWear.Core.Planning.Years.Loss>;

namespace ToolWear.Results.Looks;

/// <summary>What was lost, by form, steel, cause and hand.</summary>
internal static class LossTable
{
    public static Columns<Loss> Columns { get; } =
    [
        Row.Text("form", "Form", loss => loss.Form),
        Row.Text("steel", "Steel", loss => loss.Steel),
        Row.Text("cause", "Cause", loss => ToolScrapped.CauseWords.Word(loss.Cause)),
        Row.Text("hand", "Hand", loss => loss.Hand).Ranked(2),
        Row.Number("scrapped", "Tools", loss => loss.Tools),
        Row.Number("least_heats", "Heats from", loss => loss.Heats.IsEmpty ? null : loss.Heats[0], Quantity.Worked)
            .Means("the fewest weighted heats from new that one of them reached")
            .Ranked(1),
        Row.Number("most_heats", "to", loss => loss.Heats.IsEmpty ? null : loss.Heats[^1], Quantity.Worked)
            .Means("the most weighted heats from new that one of them reached")
            .Ranked(1),
        new Row("half_lasted_heats", "Half", (loss, _) => Middle(loss), "heats").Means(
            "weighted heats from new that half of them reached; empty is not enough data"
        ),
        Row.Text("led_to", "What led to it", loss => LedTo(loss.LedTo))
            .Means("what led to the loss, with how many tools"),
    ];

    private static Cell Middle(Loss loss) =>
        loss.Middle is { } heats
            ? Cell.Of(heats, Words.About)
            : Cell.Of(null, none: $"not enough data, {loss.Heats.Length} of {Loss.Enough}");

    public static string? LedTo(ImmutableArray<(LedTo LedTo, int Tools)> led) =>
        led.IsEmpty ? null : string.Join(", ", led.Select(each => $"{FindingWords.LedTo(each.LedTo)} {each.Tools}"));
}
