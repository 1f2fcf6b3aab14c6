using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Shops;

/// <content>Eyes, handles, series, patterns, bars, orders and settings are entered or changed.</content>
public sealed partial record Shop
{
    private Step Describe(EyeDescribed e) =>
        (
            ToolMark.Fault("eye", e.Name)
            ?? Ordered("eye length", e.LeastLength, e.GreatestLength)
            ?? Ordered("eye width", e.LeastWidth, e.GreatestWidth)
            ?? OverZero(e.Length, e.Width, e.Depth)
            ?? Tapers(e.TaperLength, e.TaperWidth)
        )
            is { } fault
            ? fault
            : this with
            {
                Eyes = Eyes.SetItem(e.Name, e),
            };

    private Step Describe(HandleDescribed e) =>
        (ToolMark.Fault("handle", e.Name) ?? OverZero(e.Length, e.Width, e.SeatTolerance) ?? Tapers(e.Taper))
            is { } fault
            ? fault
            : this with
            {
                Handles = Handles.SetItem(e.Name, e),
            };

    private Step Describe(SeriesDescribed e)
    {
        Series s = e.Series;
        string? fault =
            ToolMark.Fault("eye", s.Eye)
            ?? OverZero(s.Length, s.Width)
            ?? Tapers(s.TaperLength, s.TaperWidth)
            ?? GuessedLife.Refusal("guess_heats", s.GuessHeats)
            ?? (s.ReadyDays is < 0 or > 3650 ? $"ready_days {s.ReadyDays}: a number from 0 to 3650" : null);
        return fault is not null
            ? fault
            : this with
            {
                Series = Series.SetItem(new SeriesKey(s.Eye, s.Place, s.Form.Name), s),
            };
    }

    private Step Describe(PatternDescribed e)
    {
        string? fault =
            ToolMark.Fault("pattern", e.Pattern)
            ?? (e.Stages.IsEmpty ? $"pattern {e.Pattern} has no stage: at least one is wanted" : null)
            ?? e.Stages.Select(stage => StageFault(e.Pattern, stage)).FirstOrDefault(each => each is not null);
        return fault is not null ? fault : this with { Patterns = Patterns.SetItem(e.Pattern, e) };
    }

    private Step Describe(BarDescribed e) =>
        (
            ToolMark.Fault("bar", e.Bar)
            ?? OverZero(e.A, e.B, e.Length)
            ?? (e.PriceAKg < 0 ? $"bar {e.Bar}: a price is zero or more" : null)
        )
            is { } fault
            ? fault
            : this with
            {
                Bars = Bars.SetItem(e.Bar, e),
            };

    private Step Describe(OrderDescribed e) =>
        (
            ToolMark.Fault("order", e.Order)
            ?? (Patterns.ContainsKey(e.Pattern) ? null : UnknownPattern(e.Pattern))
            ?? (e.Heads is < 1 or > 100_000 ? $"heads {e.Heads}: a number from 1 to 100000" : null)
        )
            is { } fault
            ? fault
            : this with
            {
                Orders = Orders.SetItem(e.Order, e),
            };

    private Step Change(SettingChanged e) =>
        Settings.TryWith(e.Setting, e.Value, out ShopSettings after, out string refusal)
            ? this with
            {
                Settings = after,
            }
            : refusal;

    private string UnknownPattern(string pattern) =>
        $"there is no pattern {pattern}: "
        + (Patterns.IsEmpty ? "none has been entered yet" : $"there are {string.Join(", ", Patterns.Keys)}");

    private static string? StageFault(string pattern, PatternStage stage) =>
        ToolMark.Fault("stage", stage.Name)
        ?? (
            stage.HeatsAHead is { } heats && !(heats > 0 && heats <= 1000)
                ? $"pattern {pattern}, stage {stage.Name}: heats a head from above 0 to 1000"
                : null
        )
        ?? (
            stage.Load is { } load && !(load > 0 && load <= 100)
                ? $"pattern {pattern}, stage {stage.Name}: a load from above 0 to 100"
                : null
        );

    private static string? Ordered(string what, Length? least, Length? greatest) =>
        least > greatest ? $"{what}: the least {least} lies over the greatest {greatest}" : null;

    private static string? OverZero(params ReadOnlySpan<Length?> sizes)
    {
        foreach (Length? size in sizes)
        {
            if (size <= Length.Zero || size > SizeText.Longest)
            {
                return "a size is above zero and at most 10 m";
            }
        }

        return null;
    }

    private static string? Tapers(params ReadOnlySpan<double?> tapers)
    {
        foreach (double? taper in tapers)
        {
            if (taper is { } t && !(t >= 0 && t <= 1))
            {
                return $"taper {t}: mm per mm of depth over the whole width, from 0 to 1";
            }
        }

        return null;
    }
}
