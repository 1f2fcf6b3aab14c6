using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Wear;
using ToolWear.Results;

namespace ToolWear.Commands.Tools;

/// <summary>make-into: what a worn tool can be ground into.</summary>
internal static class MakeIntoVerb
{
    private static readonly Argument<string> Tool = FigureOptions.Maybe(
        "TOOL",
        "a worn tool of the shop, against all its series"
    );
    private static readonly Option<string?> Worn = Common.Text(
        "--worn",
        "SECTION",
        "the section as it is now, as 'teardrop 36 8.2 3'"
    );
    private static readonly Option<string?> Into = Common.Text("--into", "SECTION", "the section wanted");
    private static readonly Option<string?> CleanUp = Common.Text(
        "--clean-up-mm",
        "C",
        "what has to come off all round, usually 0.5"
    );

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "make-into",
            "Says whether a worn tool can be ground into a smaller one, by shape alone: never after a crack or an\n"
                + $"over-heat, nor in unknown steel without trial. {Words.GrindingCaution}",
            "make-into --worn 'rectangle 30.2 23.6 3' --into 'rectangle 29 21.5 3'",
            [Tool, Worn, Into, CleanUp],
            Run
        );

    private static void Run(Call call)
    {
        Length cleanUp = call.Get(CleanUp) is null ? MadeInto.UsualCleanUp : call.NeedSize(CleanUp, orZero: true);
        if (call.Get(Tool).Length > 0)
        {
            OfTool(call, cleanUp);
            return;
        }

        string worn = call.Get(Worn) ?? throw RefusedException.WrongUsage("a TOOL, or --worn with --into, is wanted");
        string into = call.Get(Into) ?? throw RefusedException.WrongUsage("--into goes with --worn");
        NamedSection target = new(into, FigureOptions.ReadSection(call, Into.Name, into));
        if (
            !MakingInto.TryFrom(
                FigureOptions.ReadSection(call, Worn.Name, worn),
                [target],
                cleanUp,
                out IReadOnlyList<MakingInto>? makings,
                out string? refusal
            )
        )
        {
            throw RefusedException.WrongUsage(refusal);
        }

        call.Print(
            new Table(
                [
                    new("into", "Into"),
                    new("possible", "Can be"),
                    new("clearance_mm", "Room, mm"),
                    new("off_each_end_mm", "Off each end"),
                    new("off_each_cheek_mm", "Off each cheek"),
                ],
                [.. makings.Select(Row)]
            ),
            after: $"\n{Words.MakeIntoCaution}\n{Words.GrindingCaution}\n"
        );
    }

    private static ImmutableArray<Cell> Row(MakingInto making) =>
        [
            Cell.Of(making.Target.Name),
            Cell.Of(making.Possible ? "yes" : "no"),
            Cell.Of(making.Clearance.ClearanceMm, FigureOptions.Decimals(2)),
            Cell.Of(making.LengthwaysMm, FigureOptions.Decimals(2)),
            Cell.Of(making.WidthwaysMm, FigureOptions.Decimals(2)),
        ];

    private static void OfTool(Call call, Length cleanUp)
    {
        if (Core.Sections.FigureRange.Refuse("The clean-up all round", cleanUp.Mm, 0, 20, " mm") is { } refusal)
        {
            throw RefusedException.WrongUsage(refusal);
        }

        using Bench bench = call.ToRead();
        ToolInShop tool = Call.Find(bench.Shop, Call.ReadMark(call.Get(Tool)));
        ShopForecasts forecasts = ShopForecasts.Of(bench.Shop);
        MadeInto into =
            MadeInto.Of(forecasts, forecasts.Of(tool.Id), cleanUp)
            ?? throw RefusedException.WrongData(Words.NoSectionOf(tool.Mark));
        ImmutableArray<string> cautions = EyeText.Cautions(into);
        Table table = MadeIntoTable.Of(into.All, call.Units(bench.Shop));
        call.Print(
            table with
            {
                Columns =
                [
                    .. table.Columns.Select(each => each.Name == "possible" ? each with { Heading = "Can be" } : each),
                ],
            },
            before: string.Concat(cautions.Select(caution => caution + "\n")) + (cautions.IsEmpty ? "" : "\n")
        );
    }
}
