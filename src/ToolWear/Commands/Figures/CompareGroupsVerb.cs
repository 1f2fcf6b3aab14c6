using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Trials;
using ToolWear.Doors;
using ToolWear.Results.Looks;
using ToolWear.Wording;

namespace ToolWear.Commands.Figures;

/// <summary>compare-groups: two groups of any CSV of readings.</summary>
internal static class CompareGroupsVerb
{
    private static readonly Option<string?> Readings = Said.File("--readings", "CSV, as for fit");
    private static readonly Option<string?> Tools = Said.File("--tools", "CSV, as for fit");
    private static readonly Argument<string> A = new("A") { Description = "a group" };
    private static readonly Argument<string> B = new("B") { Description = "another group of the same kind" };

    public static Verb Verb { get; } =
        new(
            "compare-groups",
            "Compares two groups of tools from any CSV of readings.",
            "compare-groups --readings readings.csv --tools tools.csv 4140 mild",
            [Readings, Tools, A, B],
            Run
        );

    private static void Run(Call call)
    {
        ImmutableArray<WearHistory> histories = FitVerb.Histories(call, Readings, Tools);
        (string a, string b) = (call.Get(A)!, call.Get(B)!);
        if (a == b)
        {
            throw RefusedException.WrongUsage("A and B: give two different groups");
        }

        IGrouping<string, WearHistory>[] kinds =
        [
            .. histories
                .GroupBy(history => history.Kind, StringComparer.Ordinal)
                .Where(kind => kind.Any(each => each.Group == a) && kind.Any(each => each.Group == b)),
        ];
        if (kinds.Length != 1)
        {
            IEnumerable<string> groups = histories.Select(each => each.Group).Order(StringComparer.Ordinal);
            throw RefusedException.WrongData(
                kinds.Length == 0
                    ? $"No kind of tool has both groups \"{a}\" and \"{b}\". {NearNames.Hint("", groups)}"
                    : $"{kinds.Length} kinds have groups \"{a}\" and \"{b}\" ({string.Join(", ", kinds.Select(each => each.Key))}): leave one kind in the files"
            );
        }

        call.Print(
            Compared.One.Of(new(TrialBy.Steel, "", a, b, GroupComparison.Of([.. kinds[0]], a, b))),
            after: $"{Words.TrialBasis}\n"
        );
    }
}
