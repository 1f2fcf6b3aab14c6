using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Planning;

/// <summary>A bar while batches are cut from it.</summary>
internal sealed class BarInRack(BarWanted bar, double areaMm2, double lengthMm)
{
    internal BarWanted Bar => bar;

    internal double AreaMm2 => areaMm2;

    internal double LeftMm => lengthMm - Cut.Sum(each => each.Pieces * each.PieceMm);

    internal bool IsTooShort { get; set; }

    internal List<BatchName> WantedBy { get; } = [];

    internal List<BatchOnBar> Cut { get; } = [];

    internal static BarInRack? Of(BarDescribed bar)
    {
        Length? b = bar.B == bar.A ? null : bar.B;
        return Section.TryMake(bar.Section, bar.A, bar.B ?? bar.A, Length.Zero, out Section? section, out _)
            ? new BarInRack(
                new BarWanted(bar.Bar, bar.Steel, new BarSize(bar.Section, bar.A, b)),
                section.AreaMm2(),
                bar.Length?.Mm ?? 0
            )
            : null;
    }

    internal bool Is(string wanted) => string.Equals(bar.Steel, wanted, StringComparison.OrdinalIgnoreCase);

    internal void Want(BatchName batch)
    {
        if (!WantedBy.Contains(batch))
        {
            WantedBy.Add(batch);
        }
    }

    /// <summary>Cuts as many pieces as fit, up to some.</summary>
    internal int Take(BatchName batch, int most, double pieceMm)
    {
        int fits = Math.Min(most, (int)Math.Floor((LeftMm / pieceMm) + 1e-9));
        if (fits > 0)
        {
            Cut.Add(new BatchOnBar(batch, fits, pieceMm));
        }

        return fits;
    }

    internal BarUse Use() => new(bar, lengthMm, [.. Cut], LeftMm);
}
