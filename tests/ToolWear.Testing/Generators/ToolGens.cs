using System.Collections.Immutable;
using CsCheck;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Tools;
using ToolWear.Core.Tools.Forms;

namespace ToolWear.Testing.Generators;

/// <summary>Tools with their gauge marks, stations, costs: each of them one that can be.</summary>
/// <param name="pool">What they are made of.</param>
public sealed class ToolGens(Pool pool)
{
    /// <summary>A form of tool.</summary>
    public static Gen<ToolForm> Form { get; } = Gen.OneOf([.. ToolForms.All]);

    /// <summary>Money or hours: zero or more, to the hundredth, or not known.</summary>
    public static Gen<decimal?> Amount { get; } = Gen.Nullable(Gen.Int[0, 100_000].Select(cents => cents / 100m), 0.3);

    /// <summary>A taper, 0 to 1, or none.</summary>
    public static Gen<double?> Taper { get; } = Gen.Nullable(Gen.Int[0, 1000].Select(step => step / 1000.0));

    /// <summary>A least and a greatest size in order, either of them absent at times.</summary>
    public static Gen<(Length? Least, Length? Greatest)> Between { get; } =
        Gen.Select(
            Lengths.Caliper,
            Lengths.Caliper,
            Gen.Bool,
            Gen.Bool,
            (a, b, hasLeast, hasGreatest) =>
                (hasLeast ? (a < b ? a : b) : (Length?)null, hasGreatest ? (a < b ? b : a) : (Length?)null)
        );

    /// <summary>A start: new, or in use with heats counted, estimated, unknown.</summary>
    public static Gen<ToolStart> Start { get; } =
        Gen.OneOf(
            Gen.Const(ToolStart.New),
            Gen.Const(ToolStart.Unknown),
            Gen.Select(
                Gen.Int[0, 400],
                Gen.OneOf(HeatsBeforeHow.Counted, HeatsBeforeHow.Estimated),
                (halves, how) => new ToolStart(StartedAs.InUse, Heats.OfHalves(halves), how)
            )
        );

    /// <summary>A section that can be forged.</summary>
    public static Gen<Section> Section { get; } =
        Gen.Select(
            Gen.OneOf(SectionKind.Round, SectionKind.Rectangle, SectionKind.Oval, SectionKind.Teardrop),
            Gen.Int[40, 60],
            Gen.Int[10, 20],
            Gen.Int[1, 4],
            (kind, length, width, radius) =>
                Core.Sections.Section.TryMake(
                    kind,
                    Length.FromMm((decimal)length),
                    Length.FromMm((decimal)width),
                    Length.FromMm((decimal)radius),
                    out Section? section,
                    out string? refusal
                )
                    ? section
                    : throw new InvalidOperationException(refusal)
        );

    /// <summary>Stations from the shank mark outwards.</summary>
    public static Gen<ImmutableArray<Station>> Stations { get; } =
        Gen.Select(
                Gen.Enum<BodyPart>(),
                Gen.Int[1, 30],
                Section,
                (part, step, section) => (Part: part, Step: step, Section: section)
            )
            .Array[0, 4]
            .Select(parts =>
            {
                int from = 0;
                return parts
                    .Select(each => new Station(each.Part, Length.FromMm((decimal)(from += each.Step)), each.Section))
                    .ToImmutableArray();
            });

    /// <summary>What a tool cost.</summary>
    public static Gen<ToolCost> Cost { get; } =
        Gen.Select(Amount, Amount, Amount, Amount, (a, b, c, d) => new ToolCost(a, b, c, d));

    /// <summary>A gauge mark whose scrap size lies on the right side of its start.</summary>
    public Gen<GaugeMark> Gauge { get; } =
        Gen.Select(
            pool.Gauge,
            Gen.Enum<Wears>(),
            Gen.Nullable(Gen.Enum<Measures>()),
            Gen.Nullable(Lengths.Caliper),
            Gen.Select(Lengths.Caliper, Gen.Int[1, 500], Gen.Int[1, 500]),
            Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool),
            Gen.Nullable(Gen.OneOf(10_000L, 50_000L, 25_400L).Select(nm => new Length(nm))),
            (name, wears, measures, fromMark, sizes, known, resolution) =>
            {
                (Length least, int up, int more) = sizes;
                Length start = least + new Length(up * 10_000L);
                Length greatest = start + new Length(more * 10_000L);
                return new GaugeMark(
                    name,
                    wears,
                    measures,
                    fromMark,
                    known.Item1 ? start : null,
                    known.Item2 ? least : null,
                    known.Item3 ? greatest : null,
                    resolution
                );
            }
        );

    /// <summary>A tool.</summary>
    public Gen<Tool> Tool => Of(pool.Mark);

    /// <summary>A tool with a mark of one's own choice.</summary>
    /// <param name="mark">The marks.</param>
    /// <returns>The tools.</returns>
    public Gen<Tool> Of(Gen<ToolMark> mark) =>
        Gen.Select(
            Gen.Select(mark, Form, Gen.Null(pool.Eye), Gen.Enum<Place>(), Gen.Nullable(Gen.Enum<SectionKind>())),
            Gen.Select(Gen.Null(pool.Name), Gen.Null(pool.Name), pool.MadeOn, Start),
            Gen.Select(
                Gen.Nullable(Gen.Int[1, 400].Select(halves => halves / 2.0)),
                Cost,
                Gen.Null(pool.Name),
                pool.Note
            ),
            Gauge.Array[0, 3],
            Stations,
            (what, from, more, gauges, stations) =>
                new Tool(
                    what.Item1,
                    what.Item2,
                    what.Item3,
                    what.Item4,
                    what.Item5,
                    from.Item1,
                    from.Item2,
                    from.Item3,
                    from.Item4,
                    more.Item1,
                    more.Item2,
                    more.Item3,
                    more.Item4,
                    [.. gauges.DistinctBy(gauge => gauge.Name, StringComparer.Ordinal)],
                    stations
                )
        );
}
