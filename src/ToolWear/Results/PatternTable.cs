using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Results;

/// <summary>The patterns stage by stage.</summary>
internal static class PatternTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("pattern", "Pattern"),
        new("stage", "Stage"),
        new("eye", null),
        new("form", null),
        new("place", null),
        new(null, "Tool"),
        new("work", "Work"),
        new("load", "Load"),
        new("first_guess", "First guess"),
        new("heats_by_records", "By records"),
        new("sessions", "Sessions"),
    ];

    /// <summary>The stages of all patterns of a shop.</summary>
    /// <param name="shop">The shop.</param>
    /// <returns>Pattern by pattern, in order.</returns>
    public static ImmutableArray<HeatsAHead> Stages(Shop shop) =>
        [.. HeatsAHead.Of(shop).Values.SelectMany(each => each)];

    /// <summary>Makes the table.</summary>
    /// <param name="stages">The stages.</param>
    /// <returns>A row for each.</returns>
    public static Table Of(ImmutableArray<HeatsAHead> stages) => new(Columns, [.. stages.Select(Row)]);

    private static ImmutableArray<Cell> Row(HeatsAHead stage)
    {
        static string Hundredths(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
        return
        [
            Cell.Of(stage.Pattern),
            Cell.Of(stage.Stage.Name),
            Cell.Of(stage.Stage.Eye),
            Cell.Of(stage.Stage.Form?.Name),
            Cell.Of(stage.Stage.Place == Place.None ? null : Places.Words.Word(stage.Stage.Place)),
            Cell.Of(stage.Tools?.ToString()),
            Cell.Of(stage.Stage.Work is { } work ? Works.Words.Word(work) : null),
            Cell.Of(stage.Stage.Load ?? 1, Hundredths),
            Cell.Of(stage.Stage.HeatsAHead, Hundredths),
            Cell.Of(stage.IsLearned ? stage.Heats : null, Hundredths),
            Cell.Of(stage.IsLearned ? stage.Sessions : null),
        ];
    }
}
