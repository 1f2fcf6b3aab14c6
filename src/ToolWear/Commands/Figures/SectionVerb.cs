using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Sections;
using ToolWear.Results;

namespace ToolWear.Commands.Figures;

/// <summary>section: area and perimeter of a section.</summary>
internal static class SectionVerb
{
    private static readonly Argument<string> Kind = new("KIND") { Description = "round, rectangle, oval or teardrop" };
    private static readonly Option<string?> D = Common.Text("--d", "D", "the diameter of a round");
    private static readonly Option<string?> A = Common.Text("--a", "A", "the length of the others");
    private static readonly Option<string?> B = Common.Text("--b", "B", "the width of a rectangle or an oval");
    private static readonly Option<string?> R = Common.Text("--r", "R", "the edge radius of a rectangle, 0 for sharp");
    private static readonly Option<string?> LargeR = Common.Text("--large-r", "R", "the large radius of a teardrop");
    private static readonly Option<string?> SmallR = Common.Text("--small-r", "R", "the nose radius of a teardrop");

    public static Command Make(Site site) =>
        Common.Verb(
            site,
            "section",
            "Works out the area and the perimeter of a section: round --d, rectangle --a --b --r, oval --a --b,\n"
                + "teardrop --a --large-r --small-r. With --as svg its outline.",
            "section teardrop --a 36.8 --large-r 8.8 --small-r 3.2",
            [Kind, D, A, B, R, LargeR, SmallR],
            Run,
            prints: "svg"
        );

    private static void Run(Call call)
    {
        Section section = Read(call, Call.ReadWord(SectionKinds.Words, call.Get(Kind)));
        if (call.Format() == "svg")
        {
            call.Print(OutlineSvg.Of([(section, 0)], call.Get(Kind)));
            return;
        }

        call.Print(
            new Calculated([
                new("area_mm2", "Area, mm2", Cell.Of(section.AreaMm2(), FigureOptions.Decimals(2))),
                new("perimeter_mm", "Perimeter, mm", Cell.Of(section.PerimeterMm(), FigureOptions.Decimals(2))),
            ])
        );
    }

    private static Section Read(Call call, SectionKind kind) =>
        kind switch
        {
            SectionKind.Round => FigureOptions.Make(kind, call.NeedSize(D), default, default),
            SectionKind.Rectangle => FigureOptions.Make(
                kind,
                call.NeedSize(A),
                call.NeedSize(B),
                call.Get(R) is null ? default : call.NeedSize(R, orZero: true)
            ),
            SectionKind.Oval => FigureOptions.Make(kind, call.NeedSize(A), call.NeedSize(B), default),
            SectionKind.Teardrop => FigureOptions.Make(
                kind,
                call.NeedSize(A),
                call.NeedSize(LargeR),
                call.NeedSize(SmallR, orZero: true)
            ),
            _ => throw RefusedException.WrongUsage(
                "section other: round, rectangle, oval or teardrop can be reckoned with"
            ),
        };
}
