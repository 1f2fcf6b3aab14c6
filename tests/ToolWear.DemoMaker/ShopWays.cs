using ToolWear.Core.Ledger;

namespace ToolWear.DemoMaker;

/// <summary>How the invented shop has set the program, and the two invented hands that work there.</summary>
internal static class ShopWays
{
    /// <summary>The elder hand.</summary>
    public const string Orla = "Orla";

    /// <summary>The younger hand.</summary>
    public const string Bram = "Bram";

    /// <summary>The lubricant of most days.</summary>
    public const string Graphite = "graphite in water";

    /// <summary>The lubricant that was tried on three days: too few to tell anything.</summary>
    public const string Soapstone = "soapstone";

    /// <summary>The settings.</summary>
    public static IEnumerable<LedgerEntry> Settings =>
        [
            new SettingChanged("demo", "yes"),
            new SettingChanged("units", "mm"),
            new SettingChanged("hour_rate", "45"),
            new SettingChanged("hands", $"{Orla}, {Bram}"),
            new SettingChanged("lubricant", Graphite),
            new SettingChanged("cooling", "air"),
            new SettingChanged("blows", "8"),
        ];
}
