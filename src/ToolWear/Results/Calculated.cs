using System.Collections.Immutable;

namespace ToolWear.Results;

/// <summary>One figure of a result: its pinned name, what it is for people, and its value.</summary>
internal sealed record Figure(string Name, string Heading, Cell Value);

/// <summary>A few figures that belong together.</summary>
internal sealed record Calculated(ImmutableArray<Figure> All)
{
    public Table ToTable() =>
        new(
            [.. All.Select(each => new Column(each.Name, each.Heading))],
            [
                [.. All.Select(each => each.Value)],
            ]
        )
        {
            IsOne = true,
        };
}
