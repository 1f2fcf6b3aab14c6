using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Shops;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Deeds;

/// <summary>What is wrong with the sizes of an entry: one rule for verb, screen and import. Common practice, no source.</summary>
/// <param name="Cannot">Why a size cannot be; null where all can.</param>
/// <param name="Unlikely">Why a size is asked about once; null where all are likely.</param>
public readonly record struct SizeRule(string? Cannot, string? Unlikely)
{
    // a slipped decimal point, or a fraction that was read as inches
    private const double FarTimes = 4;
    private const double OddTimes = 1.3;
    private const double NearTimes = 1.15;

    // beyond so many times what may wear off, it was another tool or another mark
    private const double MostLimits = 4;
    private const double SwellsMm = 0.3;
    private static readonly Length Large = Length.FromMm(200m);

    /// <summary>Looks at the sizes of an entry.</summary>
    /// <param name="shop">The shop before it.</param>
    /// <param name="what">The entry.</param>
    /// <returns>What is wrong; nothing where no size is.</returns>
    public static SizeRule Of(Shop shop, LedgerEntry what) =>
        what switch
        {
            ToolAdded e => First(e.Tool.GaugeMarks.Select(gauge => Added(shop, e.Tool, gauge))),
            ToolMeasured e when Find(shop, e.Tool, e.Gauge) is { } at => Known(
                shop,
                at,
                e.Size,
                e.Resolution,
                isRead: true
            ),
            ToolReworked { Gauge: { } name } e when Find(shop, e.Tool, name) is { } at => First(
                new[] { e.Before, e.After }
                    .OfType<Length>()
                    .Select(size => Known(shop, at, size, null, isRead: size == e.Before && e.Before != e.After))
            ),
            SeriesDescribed { Series: var made } when shop.Eyes.TryGetValue(made.Eye, out EyeDescribed? eye) =>
                made.Length is { } length && IsFar(length, eye.Length, FarTimes)
                    ? Never($"length {Shown(shop, length)}", $"the eye {made.Eye} is {Shown(shop, eye.Length)} long")
                    : default,
            _ => default,
        };

    private static SizeRule First(IEnumerable<SizeRule> all)
    {
        SizeRule[] wrong = [.. all];
        return new(
            wrong.Select(each => each.Cannot).FirstOrDefault(each => each is not null),
            wrong.Select(each => each.Unlikely).FirstOrDefault(each => each is not null)
        );
    }

    private static (ToolInShop Tool, GaugeMark Gauge)? Find(Shop shop, ToolMark mark, string name) =>
        shop.TryFind(mark, out ToolInShop? tool) && tool.Tool.Gauge(name) is { } gauge ? (tool, gauge) : null;

    private static SizeRule Added(Shop shop, Tool tool, GaugeMark gauge)
    {
        Length? made = shop.SeriesOf(tool)?.MadeSize(gauge.Measures);
        if (gauge.Start is { } start && made is { } series && IsFar(start, series, OddTimes))
        {
            string than = $"its series is made {Shown(shop, series)}";
            return IsFar(start, series, FarTimes) && gauge.Wears == Wears.Smaller
                ? Never($"{gauge.Name} {Shown(shop, start)}", than)
                : new(null, $"{gauge.Name} {Shown(shop, start)}: {than}.");
        }

        if ((gauge.Start ?? made) is { } from && gauge.ScrapSize is { } scrap)
        {
            return gauge.LimitFrom(from) is not { } limit
                || (gauge.Wears == Wears.Smaller && IsFar(scrap, from, FarTimes))
                    ? Never(
                        $"scrap size {Shown(shop, scrap)}",
                        $"{gauge.Name} is made {Shown(shop, from)} and wears {GaugeMark.WearsWords.Word(gauge.Wears)}"
                    )
                : gauge.IsLimitDoubtful(from)
                    ? new(null, $"{gauge.Name}: the limit of {Shown(shop, limit)} is more than a quarter of its size.")
                : default;
        }

        return gauge.Start > Large && gauge.Measures is not (Measures.Overall or Measures.Other or null)
            ? new(null, $"{gauge.Name} {Shown(shop, gauge.Start.Value)} is a large one. A fraction is read as inches.")
            : default;
    }

    /// <summary>A size of a tool that is in the shop, against its size as made, as last known, and its scrap size.</summary>
    private static SizeRule Known(
        Shop shop,
        (ToolInShop Tool, GaugeMark Gauge) at,
        Length size,
        Length? resolution,
        bool isRead
    )
    {
        GaugeMark gauge = at.Gauge;
        string what = $"{at.Tool.Mark} {gauge.Name} {Shown(shop, size)}";
        string inches =
            resolution == SizeText.FinestFraction && shop.Settings.Units == LengthUnit.Mm
                ? " A fraction is read as inches."
                : "";
        Length? last = null;
        Length? from = gauge.Start ?? shop.SeriesOf(at.Tool.Tool)?.MadeSize(gauge.Measures);
        foreach (Entered entered in at.Tool.Events)
        {
            last = entered.What switch
            {
                ToolMeasured e when e.Gauge == gauge.Name => e.Size,
                ToolReworked e when e.Gauge == gauge.Name => e.After,
                _ => last,
            };
            from ??= last;
        }

        if ((from ?? gauge.ScrapSize) is not { } basis)
        {
            return size > Large && gauge.Measures is not (Measures.Overall or Measures.Other or null)
                ? new(null, $"{what} is a large one.{inches}")
                : default;
        }

        inches = inches.Length > 0 ? inches : Perhaps(shop, size, last ?? basis);
        if (gauge.Wears == Wears.Smaller && IsFar(size, basis, FarTimes))
        {
            return Never(what, $"it {(from is null ? "is scrap at" : "began at")} {Shown(shop, basis)}", inches);
        }

        if (from is null)
        {
            // in use, first read: a size far beyond the scrap size says that the scrap size is wrong
            Length beyond = gauge.WearTo(basis, size);
            return beyond.Nanometres > basis.Nanometres / 4
                    ? Never(
                        what,
                        $"it is scrap at {Shown(shop, basis)} and wears {GaugeMark.WearsWords.Word(gauge.Wears)}"
                    )
                : beyond > Length.Zero ? new(null, $"{what} is past its scrap size of {Shown(shop, basis)} already.")
                : default;
        }

        double wear = gauge.WearTo(basis, size).Mm;
        double most = gauge.LimitFrom(basis)?.Mm ?? basis.Mm / 4;
        string began = $"it began at {Shown(shop, basis)} and wears {GaugeMark.WearsWords.Word(gauge.Wears)}";
        return wear < -most || (gauge.LimitFrom(basis) is not null && wear > MostLimits * most)
                ? Never(what, began, inches)
            : isRead && gauge.WearTo(last ?? basis, size).Mm < -Math.Max(SwellsMm, most / 4)
                ? new(
                    null,
                    $"{what}, but {Shown(shop, last ?? basis)} before. Re-forged since? Then record that first."
                )
            : default;
    }

    /// <summary>What was probably meant by a size that cannot be: the other unit, or the decimal point elsewhere.</summary>
    private static string Perhaps(Shop shop, Length size, Length near)
    {
        (LengthUnit unit, double times) =
            shop.Settings.Units == LengthUnit.Mm ? (LengthUnit.Inch, 25.4) : (LengthUnit.Mm, 1 / 25.4);
        foreach (double each in (double[])[times, 0.1, 10, 0.01, 100])
        {
            Length meant = Length.FromMm(decimal.Round((decimal)(size.Mm * each), 3));
            if (!IsFar(meant, near, NearTimes))
            {
                string bare = SizeShown.Caliper(size, shop.Settings.Units);
                string mark = SizeShown.Mark(unit);
                return each == times
                    ? $" {bare} {mark} is {Shown(shop, meant)}: if so, type {bare}{mark}."
                    : $" Is it {Shown(shop, meant)}?";
            }
        }

        return "";
    }

    private static bool IsFar(Length size, Length from, double times) =>
        size.Mm > from.Mm * times || size.Mm * times < from.Mm;

    private static SizeRule Never(string what, string why, string hint = "") =>
        new($"{what} cannot be: {why}.{hint} Look at the scale and type it again.", null);

    private static string Shown(Shop shop, Length size) =>
        $"{SizeShown.Caliper(size, shop.Settings.Units)} {SizeShown.Mark(shop.Settings.Units)}";
}
