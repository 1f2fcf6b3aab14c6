using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Core.Wear;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Results.Eyes;
using ToolWear.Wording;

namespace ToolWear.Commands.Tools;

/// <summary>make-into: what a worn tool can be ground into.</summary>
internal static class MakeIntoVerb
{
    private static readonly Argument<ToolMark?> Tool = Said.MaybeTool(
        "a worn tool of the shop, against all its series"
    );
    private static readonly Option<Section?> Worn = Said.Section(
        "--worn",
        "the section as it is now, as 'teardrop 36 8.2 3'"
    );
    private static readonly Option<Section?> Into = Said.Section("--into", "the section wanted");
    private static readonly Option<Length?> CleanUp = Said.Size(
        "--clean-up-mm",
        "C",
        "what has to come off all round, usually 0.5",
        orZero: true
    );

    public static Verb Verb { get; } =
        new(
            "make-into",
            "Says what a worn tool can be ground into.",
            "make-into --worn 'rectangle 30.2 23.6 3' --into 'rectangle 29 21.5 3'",
            [Tool, Worn, Into, CleanUp],
            Run,
            $"{Cautions.MakeIntoCaution}\n{Cautions.GrindingCaution}"
        );

    private static void Run(Call call)
    {
        Length cleanUp = call.Get(CleanUp) ?? MadeInto.UsualCleanUp;
        if (call.Get(Tool) is { } mark)
        {
            OfTool(call, call.Tool(mark), cleanUp);
            return;
        }

        if (call.Get(Worn) is not { } worn || call.Get(Into) is not { } into)
        {
            throw RefusedException.WrongUsage("give a TOOL, or --worn with --into");
        }

        if (
            !MakingInto.TryFrom(
                worn,
                [new NamedSection(call.Typed(Into), into)],
                cleanUp,
                out IReadOnlyList<MakingInto>? makings,
                out string? refusal
            )
        )
        {
            throw RefusedException.WrongUsage(refusal);
        }

        call.Print(
            ReckonedTables.Into.Over(makings),
            after: $"\n{Cautions.MakeIntoCaution}\n{Cautions.GrindingCaution}\n"
        );
    }

    private static void OfTool(Call call, ToolInShop tool, Length cleanUp)
    {
        if (FigureRange.Refuse("The clean-up all round", cleanUp.Mm, 0, 20, " mm") is { } refusal)
        {
            throw RefusedException.WrongUsage(refusal);
        }

        ShopForecasts forecasts = call.Forecasts;
        MadeInto into =
            MadeInto.Of(forecasts, forecasts.Of(tool.Id), cleanUp)
            ?? throw RefusedException.WrongData(NoSectionOf(tool.Mark));
        ImmutableArray<string> cautions = EyeText.CautionsOf(into);
        call.Print(
            MadeIntoTable.All.Over(into.All, call.Units),
            before: string.Concat(cautions.Select(caution => caution + "\n")) + (cautions.IsEmpty ? "" : "\n")
        );
    }

    private static string NoSectionOf(Core.Tools.ToolMark tool) =>
        $"{tool} is no drift in the shop, or its section, length and width are not all known";
}
