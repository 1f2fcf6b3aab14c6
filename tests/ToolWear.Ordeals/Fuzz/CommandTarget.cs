using Microsoft.Extensions.Time.Testing;
using ToolWear.Commands;
using ToolWear.Doors;
using ToolWear.Testing.Disks;

namespace ToolWear.Ordeals.Fuzz;

/// <summary>Command lines on a small shop.</summary>
/// <remarks>Verbs that write files where the command line says are left out: a changed path could lie anywhere.</remarks>
internal sealed class CommandTarget : Target
{
    private const string Store = CrashingDisk.Folder + "/shop.db";

    private static readonly string[] Lines =
    [
        "add-tool|R4|--form|drift|--eye|hatchet|--place|rough|--steel|4140|--gauge|width,smaller,60,14.0,12.8,|--note|a note",
        "add-tool|P2|--form|punch|--in-use|--heats-before|30|--counted|--made|2026-01-01",
        "open-session|--lubricant|graphite|--cooling|air|--blows|20|--hand|me|--note|dry",
        "heats|R3|3|--work|cheeks|--estimated",
        "heats|R3|0.5|--on|2026-11-11",
        "close-session|--heads|6",
        "measure|R3|width|13.6|--by|me",
        "measure|R3|width|17/32 in",
        "rework|R3|dressed|--gauge|width|--before|13.6|--after|13.5|--hours|0.5|--cost|2",
        "look-over|R3|sound|--by|me|--note|fine",
        "set-aside|R3|lent",
        "scrap|R3|worn|--note|done",
        "re-mark|R3|R3A",
        "cross-out|2|a slip",
        "set|sure|0.8",
        "set|units|in",
        "order|o1|hatchet|12|2026-12-01",
        "rack|--as|csv",
        "rack|--units|in",
        "check",
        "section|rectangle|--a|40|--b|16|--r|3|--as|json",
        "section|teardrop|--a|44|--large-r|9|--small-r|2.5",
        "inside|--outer|teardrop 36.8 8.8 3.2|--inner|rectangle 34 15 3",
        "eye|--drift-mm|36.8|--eye-c|750|--drift-c|250|--as|json",
        "slit|--perimeter-mm|100|--tool|slot-punch|--edge-mm|6|--stretch|0.25",
        "drive-depth|--worn-mm|0.3|--taper|0.03",
        "plan|--life-median|60|--life-sdlog|0.4|--used|10,20|--demand|100|--sure|0.9|--as|json",
        "import|/nowhere/at all.csv",
        "lifetimes|/nowhere.csv",
        "--help",
        "heats|--help",
    ];

    private readonly CrashingDisk _filled = new();

    public CommandTarget()
    {
        string[] gauge = ["--gauge", "width,smaller,60,14.0,12.8,"];
        foreach (
            string[] line in (string[][])
                [
                    ["add-tool", "R3", "--form", "drift", .. gauge],
                    ["heats", "R3", "2"],
                ]
        )
        {
            if (Run(_filled, line).Exit != 0)
            {
                throw new InvalidOperationException(Run(_filled, line).Error);
            }
        }
    }

    public override string Name => "command line";

    public override bool Try(Random chance)
    {
        string[] line = Lines[chance.Next(Lines.Length)].Split('|');
        // the verb itself is left alone mostly: behind a wrong one nothing is read
        int which = chance.Next(8) == 0 ? 0 : chance.Next(line.Length);
        line[which] = Changed(line[which], chance);
        if (chance.Next(6) == 0)
        {
            line = [.. line, line[chance.Next(line.Length)]];
        }

        (int exit, string output, string error) = Run(_filled.AfterKill(), line);
        if (exit == 0)
        {
            return true;
        }

        MustBeCivil(error, most: 6000);
        return exit is 1 or 2 && output.Length == 0
            ? false
            : throw new InvalidOperationException($"exit {exit}, {output.Length} characters of output: {error}");
    }

    private static (int Exit, string Output, string Error) Run(CrashingDisk disk, string[] line)
    {
        using StringWriter output = new();
        using StringWriter error = new();
        FakeTimeProvider clock = new(new DateTimeOffset(2026, 11, 12, 18, 30, 0, TimeSpan.Zero));
        Site site = new(output, error, clock, disk, () => new string('0', 32), Store, System.IO.Path.GetTempPath());
        return (Verbs.Run(site, line), output.ToString(), error.ToString());
    }
}
