using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Measure;
using ToolWear.Core.Wear.Histories;
using ToolWear.Core.Wear.Trials;
using ToolWear.Doors;
using ToolWear.Results.Looks;
using ToolWear.Wording;

namespace ToolWear.Commands.Tools;

/// <summary>compare: two steels, lubricants, ways of cooling or hands by how long the shop's tools last.</summary>
internal static class CompareVerb
{
    private static readonly Argument<string> A = new("A")
    {
        Description = "a steel, a lubricant, a way of cooling or a hand",
    };
    private static readonly Argument<string> B = new("B") { Description = "another" };
    private static readonly Option<TrialBy?> By = Said.Word(
        "--by",
        "WHAT",
        ShopTrials.ByWords,
        "steel, lubricant, cooling or hand",
        need: true
    );

    public static Verb Verb { get; } =
        new(
            "compare",
            "Compares two steels, lubricants, coolings or hands.",
            "compare 4140 mild --by steel",
            [A, B, By],
            Run,
            "It says how long the shop's tools last with each, a row for each kind of tool that was used with both. A tool counts for what it saw in four fifths of its heats."
        );

    private static void Run(Call call)
    {
        (string a, string b) = (call.Get(A)!, call.Get(B)!);
        if (a == b)
        {
            throw RefusedException.WrongUsage("A and B: give two different ones");
        }

        TrialBy by = call.Get(By)!.Value;
        ImmutableArray<WearHistory> histories = ShopTrials.Histories(call.Shop, by);
        ShopTrial[] kinds =
        [
            .. histories
                .GroupBy(history => history.Kind, StringComparer.Ordinal)
                .Where(kind => kind.Any(each => each.Group == a) && kind.Any(each => each.Group == b))
                .OrderBy(kind => kind.Key, StringComparer.Ordinal)
                .Select(kind => new ShopTrial(by, kind.Key, a, b, GroupComparison.Of([.. kind], a, b))),
        ];
        if (kinds.Length == 0)
        {
            IEnumerable<string> known = histories
                .Select(each => each.Group)
                .Where(group => group.Length > 0)
                .Order(StringComparer.Ordinal);
            throw RefusedException.WrongData(
                $"No kind of tool was used with both \"{a}\" and \"{b}\". {NearNames.Hint("", known)}"
            );
        }

        call.Print(Compared.Kinds.Over(kinds), after: $"\n{Words.TrialBasis}\n");
    }
}
