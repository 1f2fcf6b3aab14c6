using System.Collections.Immutable;
using System.Globalization;
using ToolWear.Core.Eyes;
using ToolWear.Core.Ledger;
using ToolWear.Core.Tools;

namespace ToolWear.Core.Shops;

/// <summary>One setting of the shop: its name, its usual value, what it means and which values it takes.</summary>
public sealed class ShopSetting
{
    private readonly Func<string, string?> fault;

    private ShopSetting(string name, string usual, string meaning, Func<string, string?> fault)
    {
        Name = name;
        Usual = usual;
        Meaning = meaning;
        this.fault = fault;
    }

    /// <summary>mm or in.</summary>
    public static ShopSetting Units { get; } =
        new("units", "mm", "the unit the shop speaks in: mm or in", OneOf("mm", "in"));

    /// <summary>What the caliper reads to, mm. Common practice, no source: 0.01 to 0.05.</summary>
    public static ShopSetting CaliperResolution { get; } =
        new("caliper_resolution_mm", "0.05", "what the caliper reads to, in mm", Range(0.001m, 5));

    /// <summary>The certainty of plans.</summary>
    public static ShopSetting Sure { get; } =
        new("sure", "0.9", "how sure the plans are to be: 0.9 is nine times in ten", Range(0.01m, 0.999m));

    /// <summary>The usual lubricant.</summary>
    public static ShopSetting Lubricant { get; } =
        new("lubricant", "", "the lubricant where a session names none; never used engine oil", Text);

    /// <summary>The usual cooling.</summary>
    public static ShopSetting Cooling { get; } =
        new("cooling", "", "the cooling where a session names none", OneOf([.. Care.CoolingWords.All]));

    /// <summary>The usual number of blows.</summary>
    public static ShopSetting Blows { get; } =
        new("blows", "", "blows before the tool comes out, where a session says nothing", Range(1, 1000));

    /// <summary>Who works here.</summary>
    public static ShopSetting Hands { get; } = new("hands", "", "who works here, commas between", Text);

    /// <summary>What an hour costs.</summary>
    public static ShopSetting HourRate { get; } =
        new("hour_rate", "0", "what an hour costs, in the shop's own money", Range(0, 1_000_000));

    /// <summary>Heads a day of a pattern that was never forged. Common practice, no source: an evening's work of one smith.</summary>
    public static ShopSetting HeadsADay { get; } =
        new("heads_a_day", "6", "heads that a day gives, for a pattern with no closed session yet", Range(0.1m, 1000));

    /// <summary>The days on which the hammer runs.</summary>
    public static ShopSetting HammerDays { get; } =
        new(
            "hammer_days",
            "mon tue wed thu fri",
            "the days of the week on which orders are forged, such as tue fri",
            HammerDaysFault
        );

    /// <summary>How long a bar comes, mm. Common practice, no source.</summary>
    public static ShopSetting BarLength { get; } =
        new("bar_length_mm", "3000", "how long a bar comes that has to be bought, in mm", Range(50, 20_000));

    /// <summary>What a cut takes off a bar, mm. Common practice, no source.</summary>
    public static ShopSetting CutWidth { get; } =
        new("cut_width_mm", "2", "how much of a bar a cut takes, in mm: the saw's width", Range(0, 50));

    /// <summary>The diameters of round bars that are bought, mm.</summary>
    public static ShopSetting BarSizes { get; } =
        new(
            "bar_sizes_mm",
            "",
            "the diameters of round bars that your merchant keeps, in mm, such as 20 25 32; empty for the preferred ones of EN 10060:2003, in a shop of inches for 1/16 steps to 1 1/2 in and 1/8 steps to 4 in",
            value => value.Split(' ').Select(Range(1, 500)).FirstOrDefault(fault => fault is not null)
        );

    /// <summary>Days within which one fire serves. Common practice, no source.</summary>
    public static ShopSetting BatchWindow { get; } =
        new(
            "batch_window_days",
            "7",
            "tools of one form, steel and bar that are needed within so many days are forged in one fire",
            Range(0, 365)
        );

    /// <summary>What is free below the head, mm.</summary>
    public static ShopSetting NoseRoom { get; } =
        new(
            "nose_room_mm",
            "",
            "how far a drift's nose may stand out below the head before it meets bolster or anvil, in mm",
            Range(0, 1000)
        );

    /// <summary>The key of a foot pedal.</summary>
    public static ShopSetting Pedal { get; } =
        new(
            "pedal_key",
            "",
            "the key that a foot pedal sends: at the hammer it adds a heat to the tools that work together; one sign, or one of "
                + string.Join(", ", KeyWords),
            PedalFault
        );

    /// <summary>Whether a bell rings.</summary>
    public static ShopSetting Bell { get; } =
        new(
            "bell",
            "no",
            "yes to ring the terminal's bell when a tool has done at the hammer what it should do today",
            OneOf("yes", "no")
        );

    /// <summary>Whether this is the demo.</summary>
    public static ShopSetting Demo { get; } =
        new("demo", "no", "yes for the invented shop that shows the program", OneOf("yes", "no"));

    /// <summary>A second folder for backups.</summary>
    public static ShopSetting BackupFolder { get; } =
        new("backup_folder", "", "a second folder that backups are copied to, best on another disk", Text);

    /// <summary>Every setting, in the order in which they are listed.</summary>
    public static ImmutableArray<ShopSetting> All { get; } =
    [
        Units,
        CaliperResolution,
        Sure,
        Lubricant,
        Cooling,
        Blows,
        Hands,
        HourRate,
        HeadsADay,
        HammerDays,
        BarLength,
        CutWidth,
        BarSizes,
        BatchWindow,
        NoseRoom,
        Pedal,
        Bell,
        Demo,
        BackupFolder,
        .. GuessedLife.Firsts.Select(first => new ShopSetting(
            GuessName(first.Of),
            first.Usual,
            $"how many heats {(first.Of == "other" ? "another tool" : $"{(first.Of[0] == 'o' ? "an" : "a")} {first.Of}{(Places.Words.TryParse(first.Of, out _, out _) ? " drift" : "")}")} usually lasts where nobody said: of mild steel, of oil- or water-hardening, of air-hardening",
            GuessesFault
        )),
        .. Enum.GetValues<Place>().SelectMany(place => Enum.GetValues<Work>().Select(work => MakeFactor(place, work))),
        .. Enum.GetValues<Place>().SelectMany(Temperatures),
    ];

    /// <summary>Its name: "units".</summary>
    public string Name { get; }

    /// <summary>Its value where the shop said nothing.</summary>
    public string Usual { get; }

    /// <summary>What it means, in a smith's words.</summary>
    public string Meaning { get; }

    /// <summary>The factor of a pair of place and work.</summary>
    /// <param name="place">The place.</param>
    /// <param name="work">The work.</param>
    /// <returns>The setting.</returns>
    public static ShopSetting Factor(Place place, Work work) => Known(FactorName(place, work));

    /// <summary>The first guesses of life of a form and place, one for each class of steel.</summary>
    /// <param name="form">The form.</param>
    /// <param name="place">The place.</param>
    /// <returns>The setting.</returns>
    public static ShopSetting Guesses(ToolForm form, Place place) => Known(GuessName(GuessedLife.FirstOf(form, place)));

    /// <summary>The temperature of the eye when a drift of a place lets go.</summary>
    /// <param name="place">The place.</param>
    /// <returns>The setting.</returns>
    public static ShopSetting EyeCelsius(Place place) => Known("eye_c_" + Places.Words.Word(place));

    /// <summary>The temperature of a drift of a place when it is knocked out.</summary>
    /// <param name="place">The place.</param>
    /// <returns>The setting.</returns>
    public static ShopSetting DriftCelsius(Place place) => Known("drift_c_" + Places.Words.Word(place));

    /// <summary>Finds a setting.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The setting, or null where there is none of that name.</returns>
    public static ShopSetting? Find(string name) => All.FirstOrDefault(each => each.Name == name);

    /// <summary>What is wrong with a value.</summary>
    /// <param name="value">The value as text, not empty.</param>
    /// <returns>What would be right, or null where nothing is wrong.</returns>
    public string? Fault(string value) => fault(value);

    /// <summary>The words of the days of the week, Sunday first as <see cref="DayOfWeek"/> counts.</summary>
    internal static ImmutableArray<string> DayWords { get; } = ["sun", "mon", "tue", "wed", "thu", "fri", "sat"];

    // what pedals can be made to send besides signs
    private static ImmutableArray<string> KeyWords =>
        ["Enter", "PageUp", "PageDown", "Up", "Down", "Left", "Right", "F2 to F12"];

    private static string? PedalFault(string value) =>
        (value.Length == 1 && value[0] is > ' ' and < (char)127)
        || (value != KeyWords[^1] && KeyWords.Contains(value, StringComparer.Ordinal))
        || Enumerable.Range(2, 11).Any(number => value == string.Create(CultureInfo.InvariantCulture, $"F{number}"))
            ? null
            : $"one sign such as p, or one of {string.Join(", ", KeyWords)}";

    private static string? HammerDaysFault(string value)
    {
        string[] days = value.Split(' ');
        return days.All(day => DayWords.Contains(day, StringComparer.Ordinal))
            ? null
            : $"days with a space between, of {string.Join(", ", DayWords)}";
    }

    private static string GuessName(string of) => "guess_heats_" + of.Replace(' ', '_').Replace('-', '_');

    private static string? GuessesFault(string value) =>
        value.Split(' ') is { Length: 3 } each
        && each.All(part =>
            double.TryParse(part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double heats)
            && GuessedLife.Refusal("", heats) is null
        )
            ? null
            : "three numbers of heats, such as 27 60 90: mild, oil- or water-hardening, air-hardening";

    /// <summary>The value that is meant by what a person typed: "85 %" is 0.85, a decimal comma a point.</summary>
    /// <param name="typed">What was typed.</param>
    /// <returns>The value as it is kept.</returns>
    public static string Meant(string typed)
    {
        string bare = typed.Trim().Replace(',', '.');
        bool isShare = bare.EndsWith('%');
        return !decimal.TryParse(
                bare.TrimEnd('%', ' '),
                NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out decimal number
            )
                ? typed
            : isShare ? (number / 100).ToString(CultureInfo.InvariantCulture)
            : bare;
    }

    private static ShopSetting Known(string name) =>
        Find(name) ?? throw new InvalidOperationException($"No setting {name}.");

    private static string FactorName(Place place, Work work) =>
        $"factor_{Places.Words.Word(place)}_{Works.Words.Word(work)}";

    /// <summary>Common practice, no source: opening and sizing wear a drift about a quarter as much as cheek work.</summary>
    private static ShopSetting MakeFactor(Place place, Work work)
    {
        string usual = (place, work) switch
        {
            (Place.Rough or Place.Second, Work.Opening or Work.Sizing) => "0.25",
            (Place.Finish, Work.Cheeks) => "4",
            _ => "1",
        };
        string meaning =
            $"how much a heat of {Works.Words.Word(work)} wears a tool of place {Places.Words.Word(place)}, against a heat of its own work";
        return new(FactorName(place, work), usual, meaning, Range(0, 100));
    }

    /// <summary>The usual temperatures are those of <see cref="KnockOut"/>: finish drifts let go later than the others.</summary>
    private static IEnumerable<ShopSetting> Temperatures(Place place)
    {
        string word = Places.Words.Word(place);
        KnockOut usual = place is Place.Finish or Place.None ? KnockOut.Finish : KnockOut.Rough;
        yield return new(
            "eye_c_" + word,
            Degrees(usual.Eye),
            $"how hot the eye is when a drift of place {word} lets go, degrees C",
            Range(20, 1200)
        );
        yield return new(
            "drift_c_" + word,
            Degrees(usual.Drift),
            $"how hot a drift of place {word} is when it is knocked out, degrees C",
            Range(20, 1200)
        );
    }

    private static string Degrees(SteelTemperature temperature) =>
        temperature.Celsius.ToString("0.##", CultureInfo.InvariantCulture);

    private static Func<string, string?> OneOf(params string[] words) =>
        value => words.Contains(value, StringComparer.Ordinal) ? null : $"one of {string.Join(", ", words)}";

    private static Func<string, string?> Range(decimal least, decimal greatest) =>
        value =>
            decimal.TryParse(value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal number)
            && number >= least
            && number <= greatest
                ? null
                : $"a number from {least} to {greatest} with a point";

    private static string? Text(string value) =>
        value.Length <= 200 && !value.Any(char.IsControl) ? null : "at most 200 characters on one line";
}
