using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Eyes;
using ToolWear.Core.Eyes.Slits;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Results;

namespace ToolWear.Commands.Figures;

/// <summary>slit: how long a slit an eye takes.</summary>
internal static class SlitVerb
{
    private static readonly Vocabulary<SlitTool> Tools = new(
        "tool",
        (SlitTool.Slitter, "slitter"),
        (SlitTool.SlotPunch, "slot-punch"),
        (SlitTool.SquarePunch, "square-punch")
    );
    private static readonly Argument<string> Eye = FigureOptions.Maybe(
        "EYE",
        "an eye of the shop, for the slits worth trying"
    );
    private static readonly Option<string?> Perimeter = Common.Text(
        "--perimeter-mm",
        "P",
        "the perimeter of the eye in mm"
    );
    private static readonly Option<string?> Tool = Common.Text("--tool", "TOOL", string.Join(", ", Tools.All));
    private static readonly Option<string?> Edge = Common.Text("--edge-mm", "T", "the width of a punch in mm");
    private static readonly Option<string?> Stretch = Common.Text(
        "--stretch",
        "S",
        "how far the opening may stretch, a share such as 0.25"
    );

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "slit",
            $"Works out the slit that stretches so far round an eye, or proposes slits for an eye of the shop. {Words.BlindHoleCaution}",
            "slit --perimeter-mm 93.6 --tool slot-punch --edge-mm 6 --stretch 0.25",
            [Eye, Perimeter, Tool, Edge, Stretch],
            Run
        );

    private static void Run(Call call)
    {
        SlitTool tool = call.Word(Tools, Tool) ?? SlitTool.Slitter;
        double edge = tool == SlitTool.Slitter ? 0 : call.Need(Edge);
        if (call.Get(Eye).Length > 0)
        {
            OfEye(call, tool, edge);
            return;
        }

        if (!Slit.TryLength(tool, call.Need(Perimeter), edge, call.Need(Stretch), out double slit, out string? refusal))
        {
            throw RefusedException.WrongUsage(refusal);
        }

        call.Print(
            new Calculated([new("slit_mm", "Slit, mm", Cell.Of(slit, FigureOptions.Decimals(1)))]),
            $"{Words.BlindHoleCaution}\n"
        );
    }

    private static void OfEye(Call call, SlitTool tool, double edge)
    {
        using Bench bench = call.ToRead();
        EyeDescribed eye =
            bench.Shop.Eyes.GetValueOrDefault(call.Get(Eye))
            ?? throw RefusedException.WrongData(Words.NoEye(call.Get(Eye), bench.Shop));
        if (
            !Section.TryMake(
                eye.Section,
                eye.Length,
                eye.Width,
                eye.NoseRadius ?? Length.Zero,
                out Section? section,
                out string? refusal
            ) || !SlitProposal.TryFor(tool, edge, section, out SlitProposal? proposal, out refusal)
        )
        {
            throw RefusedException.WrongData(refusal);
        }

        Func<double, string> percent = share => (share * 100).ToString("0") + " %";
        call.Print(
            new Table(
                [new("slit_mm", "Slit, mm"), new("stretch", "Stretch"), new("warning", "")],
                [
                    .. new[] { proposal.Longest, proposal.Shortest }.Select(slit =>
                        (System.Collections.Immutable.ImmutableArray<Cell>)
                            [
                                Cell.Of(slit.LengthMm, FigureOptions.Decimals(1)),
                                Cell.Of(slit.StretchShare, percent),
                                Cell.Of(slit.Warning, none: ""),
                            ]
                    ),
                ]
            ),
            after: $"{Words.BlindHoleCaution}\n"
        );
    }
}
