using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Sections;

namespace ToolWear.Core.Planning;

/// <summary>A bar while batches are cut from it.</summary>
internal sealed class BarInRack(string name, string steel, string size, double areaMm2, double lengthMm, bool isBought)
{
    internal string Name => name;

    /// <summary>Its section and size: "round 38".</summary>
    internal string Size => size;

    internal double AreaMm2 => areaMm2;

    internal double LeftMm => lengthMm - Cut.Sum(each => each.Pieces * each.PieceMm);

    internal bool IsBought => isBought;

    internal bool IsTooShort { get; set; }

    internal List<string> WantedBy { get; } = [];

    internal List<BatchOnBar> Cut { get; } = [];

    internal static BarInRack? Of(BarDescribed bar)
    {
        string size = bar.B is { } b && b != bar.A ? $"{bar.A.ToMmText()} x {b.ToMmText()}" : bar.A.ToMmText();
        return Section.TryMake(bar.Section, bar.A, bar.B ?? bar.A, Length.Zero, out Section? section, out _)
            ? new BarInRack(
                bar.Bar,
                bar.Steel,
                $"{SectionKinds.Words.Word(bar.Section)} {size}",
                section.AreaMm2(),
                bar.Length?.Mm ?? 0,
                isBought: false
            )
            : null;
    }

    internal bool Is(string wanted) => string.Equals(steel, wanted, StringComparison.OrdinalIgnoreCase);

    internal void Want(string batch)
    {
        if (!WantedBy.Contains(batch))
        {
            WantedBy.Add(batch);
        }
    }

    /// <summary>Cuts as many pieces as fit, up to some.</summary>
    internal int Take(string batch, int most, double pieceMm)
    {
        int fits = Math.Min(most, (int)Math.Floor((LeftMm / pieceMm) + 1e-9));
        if (fits > 0)
        {
            Cut.Add(new BatchOnBar(batch, fits, pieceMm));
        }

        return fits;
    }

    internal BarUse Use() => new(Name, $"{steel} {size}", isBought, lengthMm, [.. Cut], LeftMm);
}
