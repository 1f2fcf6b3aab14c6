using System.Collections.Immutable;
using CsCheck;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Testing.Generators;

/// <content>Eyes, handles, series, patterns, bars, orders, settings.</content>
public sealed partial class EntryGens
{
    private Gen<EyeMeasured> EyesMeasured() =>
        Gen.Select(
            pool.Eye,
            pool.Day,
            Gen.Null(pool.Session, 0.6),
            Gen.Nullable(pool.Mark),
            Gen.Nullable(Gen.Enum<EyeWhere>()),
            Gen.Nullable(pool.Size),
            Gen.Nullable(pool.Size),
            Gen.Nullable(Gen.Enum<HandleFits>()),
            (eye, on, session, tool, where, length, width, fits) =>
                new EyeMeasured(eye, on, session, tool, where, length, width, fits)
        );

    private Gen<EyeDescribed> Eyes() =>
        Gen.Select(
            Gen.Select(pool.Eye, Gen.Enum<SectionKind>(), pool.Size, pool.Size),
            Gen.Select(Gen.Nullable(Lengths.Caliper), Gen.Nullable(pool.Size), ToolGens.Taper, ToolGens.Taper),
            Gen.Select(Gen.Nullable(Gen.Enum<Fit>()), Gen.Nullable(Gen.Enum<Driving>()), name),
            ToolGens.Between,
            ToolGens.Between,
            (eye, more, how, length, width) =>
                new EyeDescribed(
                    eye.Item1,
                    eye.Item2,
                    eye.Item3,
                    eye.Item4,
                    more.Item1,
                    more.Item2,
                    more.Item3,
                    more.Item4,
                    how.Item1,
                    how.Item2,
                    length.Least,
                    length.Greatest,
                    width.Least,
                    width.Greatest,
                    how.Item3
                )
        );

    private Gen<HandleDescribed> Handles() =>
        Gen.Select(
            pool.Name,
            pool.Size,
            pool.Size,
            ToolGens.Taper,
            Gen.Nullable(pool.Size),
            pool.Note,
            (handle, length, width, taper, tolerance, note) =>
                new HandleDescribed(handle, length, width, taper, tolerance, note)
        );

    private Gen<SeriesDescribed> SeriesOfTools() =>
        Gen.Select(
            Gen.Select(pool.Eye, Gen.Enum<Place>(), ToolGens.Form, Gen.Enum<SectionKind>()),
            Gen.Select(
                Gen.Nullable(pool.Size),
                Gen.Nullable(pool.Size),
                Gen.Nullable(Lengths.Caliper),
                ToolGens.Taper,
                ToolGens.Taper
            ),
            Gen.Select(
                Gen.Nullable(Gen.Int[1, 400].Select(halves => halves / 2.0)),
                name,
                Gen.Nullable(Gen.Bool),
                Gen.Nullable(Gen.Int[0, 60]),
                pool.Note
            ),
            (key, sizes, more) =>
                new SeriesDescribed(
                    new Series(
                        key.Item1,
                        key.Item2,
                        key.Item3,
                        key.Item4,
                        sizes.Item1,
                        sizes.Item2,
                        sizes.Item3,
                        sizes.Item4,
                        sizes.Item5,
                        more.Item1,
                        more.Item2,
                        more.Item3,
                        more.Item4,
                        more.Item5
                    )
                )
        );

    private Gen<PatternDescribed> Patterns() =>
        Gen.Select(
            pool.Pattern,
            Gen.Select(
                pool.Name,
                Gen.Null(pool.Eye),
                Gen.Null(ToolGens.Form),
                Gen.Enum<Place>(),
                Gen.Nullable(Gen.Enum<Work>()),
                Gen.Nullable(Gen.Int[1, 40].Select(tenths => tenths / 10.0)),
                Gen.Nullable(Gen.OneOf(0.5, 1.0, 1.25, 2.0)),
                (stage, eye, form, place, work, heats, load) =>
                    new PatternStage(stage, eye, form, place, work, heats, load)
            ).Array[1, 4],
            (pattern, stages) => new PatternDescribed(pattern, [.. stages])
        );

    private Gen<BarDescribed> Bars() =>
        Gen.Select(
            pool.Name,
            pool.Name,
            Gen.Enum<SectionKind>(),
            pool.Size,
            Gen.Nullable(pool.Size),
            Gen.Nullable(pool.Size),
            name,
            ToolGens.Amount,
            (bar, steel, section, a, b, length, lot, price) =>
                new BarDescribed(bar, steel, section, a, b, length, lot, price)
        );

    private Gen<OrderDescribed> Orders() =>
        Gen.Select(
            pool.Name,
            pool.Pattern,
            pool.Heads,
            pool.Day,
            Gen.Enum<OrderState>(),
            (order, pattern, heads, due, state) => new OrderDescribed(order, pattern, heads, due, state)
        );

    /// <summary>A setting with a value that it takes, or back to the usual.</summary>
    private static Gen<SettingChanged> Settings() =>
        Gen.OneOf([.. ShopSetting.All])
            .SelectMany(setting =>
                Gen.OneOf([.. new[] { "", "in", "no", "air", "0.25", "3", "100" }.Where(Takes(setting))])
                    .Select(value => new SettingChanged(setting.Name, value))
            );

    private static Func<string, bool> Takes(ShopSetting setting) =>
        value => value.Length == 0 || setting.Fault(value) is null;
}
