using System.Collections.Immutable;
using ToolWear.Core.Planning;
using ToolWear.Core.Shops;

namespace ToolWear.Results;

/// <summary>Where the tools are, and which were looked for and not seen.</summary>
internal static class StockTakeTable
{
    private static readonly ImmutableArray<Column> Columns =
    [
        new("tool", "Tool"),
        new(null, "What"),
        new("seen_on", "Last seen"),
        new("seen_as", "By"),
        new("looked_for_on", "Looked for"),
        new("seen", "Seen then"),
        new("missing", null),
        new("state", null),
        new("who", null),
        new("peg", null),
        new(null, "Where"),
    ];

    /// <summary>Makes the table.</summary>
    /// <param name="tools">The tools.</param>
    /// <returns>A row for each, in their order.</returns>
    public static Table Of(ImmutableArray<ToolPresence> tools) => new(Columns, [.. tools.Select(Row)]);

    private static ImmutableArray<Cell> Row(ToolPresence seen) =>
        [
            Cell.Of(seen.Tool.Mark.Text),
            Cell.Of(ToolPlace.Of(seen.Tool.Tool).ToString()),
            Cell.Of(seen.SeenOn),
            Cell.Of(ToolPresence.SightingWords.Word(seen.SeenAs)),
            Cell.Of(seen.LookedFor?.On),
            Cell.Of(seen.LookedFor is { } looked ? (looked.Seen ? "yes" : "no") : null),
            Cell.Of(seen.IsMissing ? "yes" : "no"),
            Cell.Of(ToolStates.Words.Word(seen.Tool.State)),
            Cell.Of(seen.Tool.Lent?.To),
            Cell.Of(seen.Tool.Tool.Peg),
            Cell.Of(Words.WhereItIs(seen.Tool)),
        ];
}
