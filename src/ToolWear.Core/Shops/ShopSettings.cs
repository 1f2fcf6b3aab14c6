using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Measure;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Shops;

/// <summary>The shop's settings: what it said, and the usual for the rest. Immutable.</summary>
public sealed class ShopSettings
{
    private ShopSettings(ImmutableSortedDictionary<string, string> said) => Said = said;

    /// <summary>A shop that has said nothing.</summary>
    public static ShopSettings Usual { get; } =
        new(ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal));

    /// <summary>What the shop said, by the setting's name.</summary>
    public ImmutableSortedDictionary<string, string> Said { get; }

    /// <summary>The unit the shop speaks in.</summary>
    public LengthUnit Units => Get(ShopSetting.Units) == "in" ? LengthUnit.Inch : LengthUnit.Mm;

    /// <summary>What the shop's caliper reads to.</summary>
    public Length CaliperResolution => Length.FromMm(Number(ShopSetting.CaliperResolution));

    /// <summary>The key of a foot pedal: one sign, or the name of a key; null where there is none.</summary>
    public string? PedalKey => Get(ShopSetting.Pedal) is { Length: > 0 } key ? key : null;

    /// <summary>Who works here, in the order they were named.</summary>
    public ImmutableArray<string> Hands =>
        [.. Get(ShopSetting.Hands).Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];

    /// <summary>Whether a bell rings when a tool has done what it should do today.</summary>
    public bool HasBell => Get(ShopSetting.Bell) == "yes";

    /// <summary>Whether this is the demo, an invented shop.</summary>
    public bool IsDemo => Get(ShopSetting.Demo) == "yes";

    /// <summary>The certainty that the smith asks for, above 0 and below 1.</summary>
    public double Sure => (double)Number(ShopSetting.Sure);

    /// <summary>What an hour costs in the shop's own money, zero or more; null where the shop has not said.</summary>
    public decimal? HourRate => Said.ContainsKey(ShopSetting.HourRate.Name) ? Number(ShopSetting.HourRate) : null;

    /// <summary>Heads a day of a pattern that was never forged, above zero.</summary>
    public double HeadsADay => (double)Number(ShopSetting.HeadsADay);

    /// <summary>How long a bar comes that has to be bought.</summary>
    public Length BarLength => Length.FromMm(Number(ShopSetting.BarLength));

    /// <summary>What a cut takes off a bar, mm.</summary>
    public double CutWidthMm => (double)Number(ShopSetting.CutWidth);

    /// <summary>Days within which tools of one form, steel and bar are forged in one fire.</summary>
    public int BatchWindowDays => (int)Number(ShopSetting.BatchWindow);

    // EN 10060:2003, table 1, preferred diameters to 100 mm; by inch what merchants keep (common practice, no source)
    private const string Preferred =
        "10 12 13 14 15 16 18 19 20 22 24 25 26 27 28 30 32 35 36 38 40 42 45 48 50 52 55 60 63 65 70 73 75 80 85 90 95 100";

    /// <summary>The diameters in which round bars are bought, the least first.</summary>
    public ImmutableArray<Length> BarSizes =>
        (Get(ShopSetting.BarSizes), Units) switch
        {
            ({ Length: 0 }, LengthUnit.Inch) =>
            [
                .. Enumerable
                    .Range(4, 21)
                    .Select(x => x * 4)
                    .Concat(Enumerable.Range(13, 20).Select(x => x * 8))
                    .Select(x => new Length(x * SizeText.FinestFraction.Nanometres)),
            ],
            ({ Length: 0 }, _) => [.. Preferred.Split(' ').Select(Mm)],
            ({ } said, _) => [.. said.Split(' ').Select(Mm).Order()],
        };

    private static Length Mm(string text) => Length.FromMm(decimal.Parse(text, CultureInfo.InvariantCulture));

    /// <summary>The lubricant that is used where a session says nothing; null where none was named.</summary>
    public string? Lubricant => Get(ShopSetting.Lubricant) is { Length: > 0 } usual ? usual : null;

    /// <summary>The cooling that is used where a session says nothing; null where none was named.</summary>
    public Cooling? Cooling =>
        Care.CoolingWords.TryParse(Get(ShopSetting.Cooling), out Cooling usual, out _) ? usual : null;

    /// <summary>How much a heat of other work than its own wears a tool, against a heat of its own.</summary>
    /// <param name="place">The tool's place.</param>
    /// <param name="work">The work.</param>
    /// <returns>The factor, zero or more.</returns>
    public double Factor(Place place, Work work) => (double)Number(ShopSetting.Factor(place, work));

    /// <summary>How many heats a tool is guessed to last where nobody said; one of unknown steel as of oil- or
    /// water-hardening.</summary>
    /// <param name="form">Its form.</param>
    /// <param name="place">Its place in the series.</param>
    /// <param name="steel">Its steel; null where not known.</param>
    /// <returns>Weighted heats, above zero.</returns>
    public double GuessHeats(ToolForm form, Place place, string? steel)
    {
        int of = SteelClasses.Of(steel) switch
        {
            SteelClass.Mild => 0,
            SteelClass.AirHardening => 2,
            _ => 1,
        };
        return double.Parse(Get(ShopSetting.Guesses(form, place)).Split(' ')[of], CultureInfo.InvariantCulture);
    }

    /// <summary>The temperature of the eye when the drift lets go, degrees Celsius.</summary>
    /// <param name="place">The drift's place.</param>
    /// <returns>Degrees Celsius, 20 to 1200.</returns>
    public double EyeCelsius(Place place) => (double)Number(ShopSetting.EyeCelsius(place));

    /// <summary>The temperature of the drift when it is knocked out, degrees Celsius.</summary>
    /// <param name="place">The drift's place.</param>
    /// <returns>Degrees Celsius, 20 to 1200.</returns>
    public double DriftCelsius(Place place) => (double)Number(ShopSetting.DriftCelsius(place));

    /// <summary>How hot drift and eye of a place are when the drift is knocked out.</summary>
    /// <param name="place">The drift's place.</param>
    /// <returns>Both temperatures.</returns>
    public KnockOut KnockOutOf(Place place) =>
        new(SteelTemperature.Of(DriftCelsius(place)), SteelTemperature.Of(EyeCelsius(place)));

    /// <summary>How far a drift's nose may stand out below a head before it meets bolster or anvil; null where not set.</summary>
    public Length? NoseRoom =>
        Get(ShopSetting.NoseRoom) is { Length: > 0 } ? Length.FromMm(Number(ShopSetting.NoseRoom)) : null;

    /// <summary>Whether orders are forged on a day of the week.</summary>
    /// <param name="day">The day of the week.</param>
    /// <returns>True where the hammer runs then.</returns>
    public bool IsHammerDay(DayOfWeek day) =>
        Get(ShopSetting.HammerDays).Split(' ').Contains(ShopSetting.DayWords[(int)day], StringComparer.Ordinal);

    /// <summary>The value of a setting: what the shop said, else the usual.</summary>
    /// <param name="setting">A setting.</param>
    /// <returns>Its value as text.</returns>
    public string Get(ShopSetting setting) => Said.GetValueOrDefault(setting.Name, setting.Usual);

    /// <summary>The settings after a change.</summary>
    /// <param name="name">The setting's name.</param>
    /// <param name="value">Its value as text; empty goes back to the usual.</param>
    /// <param name="after">The settings after it.</param>
    /// <param name="refusal">What is wrong and what would be right, where it cannot be.</param>
    /// <returns>True where it was taken.</returns>
    public bool TryWith(string name, string value, out ShopSettings after, out string refusal)
    {
        after = this;
        if (ShopSetting.Find(name) is not { } setting)
        {
            refusal = NearNames.Refusal("setting", name, ShopSetting.All.Select(each => each.Name));
            return false;
        }

        refusal =
            value.Length == 0 ? ""
            : setting.Fault(value) is { } fault ? $"{name} \"{value}\": {fault}"
            : "";
        if (refusal.Length == 0)
        {
            after = new(value.Length == 0 ? Said.Remove(name) : Said.SetItem(name, value));
        }

        return refusal.Length == 0;
    }

    private decimal Number(ShopSetting setting) =>
        decimal.Parse(Get(setting), NumberStyles.Number, CultureInfo.InvariantCulture);
}
