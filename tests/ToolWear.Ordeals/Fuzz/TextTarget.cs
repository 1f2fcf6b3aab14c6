using ToolWear.Core.Measure;
using ToolWear.Core.Tools;
using ToolWear.Doors;

namespace ToolWear.Ordeals.Fuzz;

/// <summary>Sizes, heats and marks as they are typed.</summary>
internal sealed class TextTarget : Target
{
    private static readonly string[] Sizes =
    [
        "36.5",
        "36,5",
        "36.5 mm",
        "1 7/16",
        "1-7/16\"",
        "7/16",
        "1.44 in",
        "0.001\"",
        "10000",
        ".5",
        "  14.2  ",
        "1,5″",
        "63/64 inch",
    ];
    private static readonly string[] Counts = ["1", "0.5", "12", "2,5", "1000", "999.5", "3 1/2"];
    private static readonly string[] Marks = ["R3", "Größe 3", "=R1", "🔨1", "R é", "槌-2", new string('M', 40)];

    public override string Name => "sizes, heats, marks";

    public override bool Try(Random chance)
    {
        bool isTaken = chance.Next(4) switch
        {
            0 => ToolMark.TryParse(Text(Marks, chance), out _, out string mark) || IsCivil(mark),
            1 => Heats.TryParse(Text(Counts, chance), out Heats heats, out string count)
                ? heats.Halves > 0
                : IsCivil(count),
            2 => SizeText.TryParseMm(Text(Sizes, chance), out Length length, out string mm)
                ? MustBeASize(length)
                : IsCivil(mm),
            _ => SizeText.TryParse(
                Text(Sizes, chance),
                chance.Next(2) == 0 ? LengthUnit.Mm : LengthUnit.Inch,
                out TypedSize size,
                out string typed
            )
                ? MustBeASize(size.Length)
                : IsCivil(typed),
        };
        return isTaken;
    }

    private static string Text(string[] valid, Random chance) => Changed(valid[chance.Next(valid.Length)], chance);

    // What is refused repeats what was typed; whoever prints it takes care of the terminal.
    private static bool IsCivil(string refusal)
    {
        MustBeCivil(HarmlessWriter.Of(refusal), most: 300);
        return false;
    }

    private static bool MustBeASize(Length length) =>
        length.Nanometres > 0 && length <= SizeText.Longest
            ? true
            : throw new InvalidOperationException($"a size of {length}");
}
