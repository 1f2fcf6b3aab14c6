using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Sections;
using ToolWear.Pens;
using ToolWear.Results.Eyes;

namespace ToolWear.Commands.Figures;

/// <summary>inside: how much room one section leaves round another.</summary>
internal static class InsideVerb
{
    private static readonly Option<Section?> Outer = Said.Section(
        "--outer",
        "the section that should hold the other",
        need: true
    );
    private static readonly Option<Section?> Inner = Said.Section(
        "--inner",
        "the section that should lie inside",
        need: true
    );

    public static Verb Verb { get; } =
        new(
            "inside",
            "Says how much room one section has inside another.",
            "inside --outer 'teardrop 36.8 8.8 3.2' --inner 'rectangle 34 15 3'",
            [Outer, Inner],
            Run,
            "Below zero it would burst the outer one. Sections: 'round d', 'rectangle a b r', 'oval a b', 'teardrop a large-r small-r'. --as svg draws both outlines.",
            "svg"
        );

    private static void Run(Call call)
    {
        (Section outer, Section inner) = (call.Get(Outer)!, call.Get(Inner)!);
        Clearance clearance = Inside.Of(outer, inner);
        if (call.Format == "svg")
        {
            call.Print(OutlineSvg.Of([(outer, 0), (inner, clearance.ShiftMm)], clearance.ToWords()));
            return;
        }

        call.Print(ReckonedTables.Inside.Of(clearance), after: $"{clearance.ToWords()}\n");
    }
}
