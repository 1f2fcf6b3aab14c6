using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Eyes.Slits;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Doors;
using ToolWear.Results.Eyes;
using ToolWear.Wording;

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
    private static readonly Argument<string?> Eye = Said.Maybe("EYE", "an eye of the shop, for the slits worth trying");
    private static readonly Option<double?> Perimeter = Said.Number(
        "--perimeter-mm",
        "P",
        "the perimeter of the eye in mm"
    );
    private static readonly Option<SlitTool?> Tool = Said.Word("--tool", "TOOL", Tools);
    private static readonly Option<double?> Edge = Said.Number("--edge-mm", "T", "the width of a punch in mm");
    private static readonly Option<double?> Stretch = Said.Number(
        "--stretch",
        "S",
        "how far the opening may stretch, a share such as 0.25"
    );

    public static Verb Verb { get; } =
        new(
            "slit",
            "Works out the slit for an eye.",
            "slit --perimeter-mm 93.6 --tool slot-punch --edge-mm 6 --stretch 0.25",
            [Eye, Perimeter, Tool, Edge, Stretch],
            Run,
            $"Give a perimeter, or an eye of the shop for the slits worth trying.\n{Cautions.BlindHoleCaution}"
        );

    private static void Run(Call call)
    {
        SlitTool tool = call.Get(Tool) ?? SlitTool.Slitter;
        double edge = tool == SlitTool.Slitter ? 0 : call.Need(Edge);
        if (call.Get(Eye) is { } eye)
        {
            OfEye(call, eye, tool, edge);
            return;
        }

        if (!Slit.TryLength(tool, call.Need(Perimeter), edge, call.Need(Stretch), out double slit, out string? refusal))
        {
            throw RefusedException.WrongUsage(refusal);
        }

        call.Print(ReckonedTables.SlitLength.Of(slit), after: $"{Cautions.BlindHoleCaution}\n");
    }

    private static void OfEye(Call call, string name, SlitTool tool, double edge)
    {
        EyeDescribed eye = Call.Named("eye", call.Shop.Eyes, name);
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

        call.Print(
            ReckonedTables.Slits.Over([proposal.Longest, proposal.Shortest]),
            after: $"{Cautions.BlindHoleCaution}\n"
        );
    }
}
