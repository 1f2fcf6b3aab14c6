using CsCheck;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Testing.Generators;

/// <summary>What entries are made of. A narrow pool makes entries that meet each other, a wide one makes odd ones.</summary>
/// <param name="Mark">Marks of tools.</param>
/// <param name="Session">Names of sessions.</param>
/// <param name="Gauge">Names of gauge marks.</param>
/// <param name="Eye">Names of eyes.</param>
/// <param name="Pattern">Names of patterns.</param>
/// <param name="Name">Names of everything else.</param>
/// <param name="Note">Notes, null at times.</param>
/// <param name="Day">Days.</param>
/// <param name="MadeOn">Days on which tools were made, null at times.</param>
/// <param name="Size">Sizes.</param>
/// <param name="Heats">Numbers of heats.</param>
/// <param name="Blows">Blows.</param>
/// <param name="Heads">Heads.</param>
/// <param name="Entry">Numbers of entries.</param>
public sealed record Pool(
    Gen<ToolMark> Mark,
    Gen<string> Session,
    Gen<string> Gauge,
    Gen<string> Eye,
    Gen<string> Pattern,
    Gen<string> Name,
    Gen<string?> Note,
    Gen<DateOnly> Day,
    Gen<DateOnly?> MadeOn,
    Gen<Length> Size,
    Gen<Heats> Heats,
    Gen<int> Blows,
    Gen<int> Heads,
    Gen<long> Entry
)
{
    /// <summary>The first day of a narrow ledger, a Monday.</summary>
    public static DateOnly FirstDay { get; } = new(2026, 3, 2);

    /// <summary>The days of a narrow ledger.</summary>
    public const int Days = 6;

    /// <summary>Every value valid by itself, anything that can be written.</summary>
    public static Pool Wide { get; } =
        new(
            Texts.Mark,
            Texts.Name,
            Texts.Name,
            Texts.Name,
            Texts.Name,
            Texts.Name,
            Texts.Note,
            Gen.Int[0, 20_000].Select(new DateOnly(2000, 1, 1).AddDays),
            Gen.Nullable(Gen.Int[0, 20_000].Select(new DateOnly(2000, 1, 1).AddDays)),
            Lengths.Size,
            Gen.Int[1, 2000].Select(Core.Measure.Heats.OfHalves),
            Gen.Int[1, 1000],
            Gen.Int[1, 10_000],
            Gen.Long[1, 1_000_000]
        );

    /// <summary>Few names and days, and now and then a value that must be refused.</summary>
    public static Pool Narrow { get; } =
        new(
            Gen.OneOf("R1", "R2", "F1", "S1", "R9").Select(Texts.MarkOf),
            Gen.OneOf("s1", "s2", "s3", "s4", "s5", "s6", "s7"),
            Gen.OneOf("width", "width", "length", "overall", "nose"),
            Gen.OneOf("hatchet", "hammer"),
            Gen.OneOf("axe", "hammer"),
            Gen.OneOf("one", "two"),
            Gen.Const((string?)null),
            Gen.Int[0, Days - 1].Select(FirstDay.AddDays),
            Gen.Nullable(Gen.Int[0, 2].Select(FirstDay.AddDays), 0.7),
            Gen.Frequency(
                (30, Lengths.Caliper),
                (1, Gen.Const(Length.Zero)),
                (1, Gen.Const(new Length(-1))),
                (1, Gen.Const(new Length(SizeText.Longest.Nanometres + 1)))
            ),
            Gen.Frequency((30, Gen.Int[1, 20]), (1, Gen.Const(0)), (1, Gen.Const(2000)), (1, Gen.Const(2001)))
                .Select(Core.Measure.Heats.OfHalves),
            Gen.OneOf(1, 12, 20, 1000, 0, 1001),
            Gen.OneOf(0, 1, 12, 10_000, -1, 10_001),
            Gen.Long[0, 60]
        );
}
