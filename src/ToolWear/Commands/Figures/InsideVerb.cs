using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Sections;
using ToolWear.Results;

namespace ToolWear.Commands.Figures;

/// <summary>inside: how much room one section leaves round another.</summary>
internal static class InsideVerb
{
    private static readonly Option<string?> Outer = Common.Text(
        "--outer",
        "SECTION",
        "the section that should hold the other"
    );
    private static readonly Option<string?> Inner = Common.Text(
        "--inner",
        "SECTION",
        "the section that should lie inside"
    );

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "inside",
            "Says with how much room a section lies inside another, and where it is least. Below zero it bursts it.\n"
                + "Sections: 'round d', 'rectangle a b r', 'oval a b', 'teardrop a large-r small-r'.\n"
                + "With --as svg both outlines.",
            "inside --outer 'teardrop 36.8 8.8 3.2' --inner 'rectangle 34 15 3'",
            [Outer, Inner],
            Run,
            prints: "svg"
        );

    private static void Run(Call call)
    {
        Section outer = FigureOptions.ReadSection(call, Outer.Name, Need(call, Outer));
        Section inner = FigureOptions.ReadSection(call, Inner.Name, Need(call, Inner));
        Clearance clearance = Inside.Of(outer, inner);
        if (call.Format() == "svg")
        {
            call.Print(OutlineSvg.Of([(outer, 0), (inner, clearance.ShiftMm)], clearance.ToWords()));
            return;
        }

        string leastAt = clearance.LeastAt switch
        {
            NearestAt.Nose => "nose",
            NearestAt.Back => "back",
            _ => "cheek",
        };
        call.Print(
            new Calculated([
                new("clearance_mm", "Clearance, mm", Cell.Of(clearance.ClearanceMm, FigureOptions.Decimals(2))),
                new("least_at", "Least at", Cell.Of(leastAt)),
            ]),
            $"{clearance.ToWords()}\n"
        );
    }

    private static string Need(Call call, Option<string?> option) =>
        call.Get(option) ?? throw RefusedException.WrongUsage($"{option.Name} 'KIND SIZES' is wanted");
}
