using System.Collections.Immutable;
using System.CommandLine;
using ToolWear.Commands.Calls;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Doors;
using ToolWear.Pens;
using ToolWear.Results.Eyes;

namespace ToolWear.Commands.Figures;

/// <summary>section: area and perimeter of a section.</summary>
internal static class SectionVerb
{
    private static readonly Argument<SectionKind> Kind = Said.Word(
        "KIND",
        SectionKinds.Words,
        "round, rectangle, oval or teardrop"
    );
    private static readonly Option<Length?> D = Said.Size("--d", "D", "the diameter of a round");
    private static readonly Option<Length?> A = Said.Size("--a", "A", "the length of the others");
    private static readonly Option<Length?> B = Said.Size("--b", "B", "the width of a rectangle or an oval");
    private static readonly Option<Length?> R = Said.Size(
        "--r",
        "R",
        "the edge radius of a rectangle, 0 for sharp",
        orZero: true
    );
    private static readonly Option<Length?> LargeR = Said.Size("--large-r", "R", "the large radius of a teardrop");
    private static readonly Option<Length?> SmallR = Said.Size(
        "--small-r",
        "R",
        "the nose radius of a teardrop",
        orZero: true
    );

    public static Verb Verb { get; } =
        new(
            "section",
            "Works out the area and the perimeter of a section.",
            "section teardrop --a 36.8 --large-r 8.8 --small-r 3.2",
            [Kind, D, A, B, R, LargeR, SmallR],
            Run,
            "Give round --d, rectangle --a --b --r, oval --a --b, or teardrop --a --large-r --small-r. --as svg draws its outline.",
            "svg"
        );

    private static void Run(Call call)
    {
        SectionKind kind = call.Get(Kind);
        if (!Said.TryMake(kind, Sizes(call, kind), out Section? section, out string? refusal))
        {
            throw RefusedException.WrongUsage(refusal);
        }

        if (call.Format == "svg")
        {
            call.Print(OutlineSvg.Of([(section, 0)], SectionKinds.Words.Word(kind)));
            return;
        }

        call.Print(ReckonedTables.OfSection.Of(section));
    }

    private static ImmutableArray<Length> Sizes(Call call, SectionKind kind)
    {
        Option<Length?>[] its = kind switch
        {
            SectionKind.Round => [D],
            SectionKind.Rectangle => [A, B, R],
            SectionKind.Oval => [A, B],
            SectionKind.Teardrop => [A, LargeR, SmallR],
            _ => throw RefusedException.WrongUsage(
                "section other: round, rectangle, oval or teardrop can be worked out"
            ),
        };
        Option<Length?>[] others = [.. new[] { D, A, B, R, LargeR, SmallR }.Except(its)];
        call.Without($"does not belong to {SectionKinds.Words.Word(kind)}: leave it out", others);
        return [.. its.Select(each => each == R ? call.Get(R) ?? Length.Zero : call.Need(each))];
    }
}
