using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Planning;

namespace ToolWear.Results;

/// <summary>Heats a head by pattern and stage: the first guess, and what the records taught.</summary>
internal static class HeatsAHeadTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("pattern", "Pattern"),
        new("stage", "Stage"),
        new("first_guess", "First guess"),
        new("learned", "By records"),
        new("spread", "Spread"),
        new("sessions", "Sessions"),
        new("used", "Used"),
        new("weighted", "Weighted"),
    ];

    /// <summary>Makes the table.</summary>
    /// <param name="book">The open orders.</param>
    /// <returns>A row for each stage of a pattern that is ordered.</returns>
    public static Table Of(OrderBook book) =>
        new(Columns, [.. book.Stages.Values.SelectMany(stages => stages).Select(Row)]);

    private static ImmutableArray<Cell> Row(HeatsAHead stage)
    {
        static string Hundredths(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
        return
        [
            Cell.Of(stage.Pattern),
            Cell.Of(stage.Stage.Name),
            Cell.Of(stage.Stage.HeatsAHead, Hundredths),
            Cell.Of(stage.IsLearned ? stage.Heats : null, Hundredths),
            Cell.Of(stage.Spread, Hundredths),
            Cell.Of(stage.IsLearned ? stage.Sessions : null),
            Cell.Of(stage.IsLearned ? "records" : "first guess"),
            Cell.Of(stage.Weighted, Hundredths),
        ];
    }
}
