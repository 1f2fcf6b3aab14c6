using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Core.Eyes;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;
using ToolWear.Tables;

namespace ToolWear.Commands;

/// <summary>make-into: what a worn tool can be ground into.</summary>
internal static class MakeIntoVerb
{
    // what comes off all round to be clean again; common practice, no source
    private const decimal UsualCleanUpMm = 0.5m;

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
        Length cleanUp = call.Get(CleanUp) is null
            ? Length.FromMm(UsualCleanUpMm)
            : call.NeedSize(CleanUp, orZero: true);
        (Section worn, IReadOnlyList<NamedSection> targets) =
            call.Get(Tool).Length > 0 ? OfTool(call) : OfOptions(call);
        if (!MakingInto.TryFrom(worn, targets, cleanUp, out IReadOnlyList<MakingInto>? makings, out string? refusal))
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
                [.. makings.OrderByDescending(each => each.Possible).Select(Row)]
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

    private static (Section, IReadOnlyList<NamedSection>) OfOptions(Call call)
    {
        string worn = call.Get(Worn) ?? throw RefusedException.WrongUsage("a TOOL, or --worn with --into, is wanted");
        string into = call.Get(Into) ?? throw RefusedException.WrongUsage("--into goes with --worn");
        return (
            FigureOptions.ReadSection(call, Worn.Name, worn),
            [new NamedSection(into, FigureOptions.ReadSection(call, Into.Name, into))]
        );
    }

    private static (Section, IReadOnlyList<NamedSection>) OfTool(Call call)
    {
        using Bench bench = call.ToRead();
        ToolInShop tool = Call.Find(bench.Shop, Call.ReadMark(call.Get(Tool)));
        Series? own = bench.Shop.SeriesOf(tool.Tool);
        Length? length = LastSize(bench.Shop, tool, Measures.Length) ?? own?.Length;
        Length? width = LastSize(bench.Shop, tool, Measures.Width) ?? own?.Width;
        if (
            (tool.Tool.Section ?? own?.Section) is not { } kind
            || (length ?? width) is not { } a
            || !Section.TryMake(kind, a, width ?? a, own?.Radius ?? Length.Zero, out Section? worn, out _)
        )
        {
            throw RefusedException.WrongData($"{tool.Mark}: its section, length and width are not all known");
        }

        return (
            worn,
            [.. bench.Shop.Series.Values.Where(series => series != own).Select(Target).OfType<NamedSection>()]
        );
    }

    private static NamedSection? Target(Series series) =>
        (series.Length ?? series.Width) is { } a
        && Section.TryMake(
            series.Section,
            a,
            series.Width ?? a,
            series.Radius ?? Length.Zero,
            out Section? section,
            out _
        )
            ? new NamedSection(Words.SeriesName(series.Eye, series.Place, series.Form.Name), section)
            : null;

    private static Length? LastSize(Shop shop, ToolInShop tool, Measures measures) =>
        Core
            .Wear.Histories.ShopHistories.Of(shop, tool)
            .FirstOrDefault(each => each.Gauge.Measures == measures)
            ?.LastKnown;
}
