using System.Collections.Immutable;

namespace ToolWear;

/// <summary>What a key does.</summary>
public enum Act
{
    /// <summary>Leaves the program.</summary>
    Leave,

    /// <summary>Goes back to the screen before.</summary>
    Back,

    /// <summary>Shows every key.</summary>
    Help,

    /// <summary>Takes the last thing recorded back.</summary>
    TakeBack,

    /// <summary>One row up or down.</summary>
    Move,

    /// <summary>One page up or down.</summary>
    Page,

    /// <summary>Does what the screen is for: opens, begins, takes, goes on.</summary>
    Enter,

    /// <summary>Goes to the tally.</summary>
    GoHammer,

    /// <summary>Goes to what is to be measured.</summary>
    GoMeasure,

    /// <summary>Goes to the forge list.</summary>
    GoForge,

    /// <summary>Goes to the trials.</summary>
    GoTrials,

    /// <summary>Goes to the ledger.</summary>
    GoLedger,

    /// <summary>Goes to the shop page.</summary>
    GoShop,

    /// <summary>Adds a tool, question by question.</summary>
    GoNewTool,

    /// <summary>Enters the tools that are there, in a table.</summary>
    GoTable,

    /// <summary>Writes the wear history.</summary>
    Export,

    /// <summary>Reads a CSV set.</summary>
    Import,

    /// <summary>Fills the empty store with the invented shop, to look at.</summary>
    Demo,

    /// <summary>Takes a tool or leaves it.</summary>
    Toggle,

    /// <summary>Puts a tool into the set that works together.</summary>
    Together,

    /// <summary>Another pattern.</summary>
    Pattern,

    /// <summary>A heat.</summary>
    Heat,

    /// <summary>A head through a stage.</summary>
    Head,

    /// <summary>Closes the session.</summary>
    Close,

    /// <summary>A finding.</summary>
    Find,

    /// <summary>Another hand.</summary>
    Who,

    /// <summary>Another gauge mark.</summary>
    Gauge,

    /// <summary>Chart or words.</summary>
    Words,

    /// <summary>Crosses an entry out.</summary>
    CrossOut,

    /// <summary>Finds an entry.</summary>
    Search,

    /// <summary>Goes to the orders.</summary>
    GoOrders,

    /// <summary>Goes to the costs.</summary>
    GoCosts,

    /// <summary>Goes to the patterns.</summary>
    GoPatterns,

    /// <summary>Adds a stage.</summary>
    NewStage,

    /// <summary>Goes to the eyes and handles.</summary>
    GoEyes,

    /// <summary>Goes to the series of an eye.</summary>
    GoSeries,

    /// <summary>Goes to the bars.</summary>
    GoBars,

    /// <summary>Adds a row.</summary>
    Add,

    /// <summary>Drops an order.</summary>
    Drop,

    /// <summary>Says that an order is done.</summary>
    Finish,

    /// <summary>One tool fewer.</summary>
    Fewer,

    /// <summary>Another certainty.</summary>
    Certainty,

    /// <summary>More heads of an order.</summary>
    MoreHeads,

    /// <summary>A tool lost.</summary>
    Lose,

    /// <summary>Whether a rework pays.</summary>
    Reforge,

    /// <summary>Stops what is being worked out.</summary>
    Stop,

    /// <summary>Enters a handle.</summary>
    NewHandle,

    /// <summary>Leaves a proposed row out.</summary>
    LeaveOut,

    /// <summary>Records all that is proposed.</summary>
    TakeAll,

    /// <summary>Scraps a tool.</summary>
    Scrap,

    /// <summary>Goes to the year.</summary>
    GoYear,

    /// <summary>The year before or after.</summary>
    Year,

    /// <summary>Goes to the loans.</summary>
    GoLoans,

    /// <summary>Goes to the stock-take.</summary>
    GoStockTake,

    /// <summary>Goes to what a helper is handed.</summary>
    GoHandOver,

    /// <summary>A heat by the foot pedal.</summary>
    Pedal,

    /// <summary>A tool is there.</summary>
    Seen,

    /// <summary>A tool is not there.</summary>
    NotSeen,
}

/// <summary>What must be there for a key to work; the screen knows whether it is.</summary>
public enum Need
{
    /// <summary>Nothing.</summary>
    Nothing,

    /// <summary>A row to speak of.</summary>
    Row,

    /// <summary>More rows than fit.</summary>
    MorePages,

    /// <summary>Something recorded in this sitting.</summary>
    Recorded,

    /// <summary>A tool chosen for tonight.</summary>
    Chosen,

    /// <summary>A pattern in the shop.</summary>
    Pattern,

    /// <summary>A stage of the pattern.</summary>
    Stage,

    /// <summary>Two tools that can work together.</summary>
    Set,

    /// <summary>A tool in the hand.</summary>
    InHand,

    /// <summary>Names of hands in the shop.</summary>
    Hands,

    /// <summary>Tools in the shop.</summary>
    Tools,

    /// <summary>An empty store.</summary>
    EmptyStore,

    /// <summary>Two gauge marks or more.</summary>
    Gauges,

    /// <summary>A line that is being typed.</summary>
    Typing,

    /// <summary>An open order.</summary>
    Orders,

    /// <summary>A question that wants an answer.</summary>
    Asked,

    /// <summary>Something that is being worked out.</summary>
    Working,

    /// <summary>An eye to speak of.</summary>
    Eye,

    /// <summary>Something proposed or changed that is not recorded yet.</summary>
    Changed,

    /// <summary>Something to choose from: two rows at least, or the words of an answer.</summary>
    Choice,

    /// <summary>More than one year.</summary>
    Years,

    /// <summary>A key for the pedal, and tools that it can mean.</summary>
    Pedal,
}

/// <summary>One key: a row of data from which foot, help and what happens come.</summary>
/// <param name="Where">The screen; null for all.</param>
/// <param name="Act">What it does.</param>
/// <param name="Names">The keys; which of them was pressed tells up from down, the first tool from the second.</param>
/// <param name="Shown">How the foot names the key.</param>
/// <param name="Words">What the foot says.</param>
/// <param name="Does">What help says.</param>
/// <param name="Need">What must be there; else it is refused with a sentence.</param>
/// <param name="OnlyInHelp">Whether the foot leaves it out, for the body of the screen shows it.</param>
/// <param name="Records">Whether it can write an entry into the ledger; no other key does.</param>
public sealed record KeyRow(
    ScreenName? Where,
    Act Act,
    ImmutableArray<string> Names,
    string Shown,
    string Words,
    string Does,
    Need Need = Need.Nothing,
    bool OnlyInHelp = false,
    bool Records = false
);

/// <summary>Every key of every screen.</summary>
public static partial class Keys
{
    private static readonly ImmutableArray<string> UpDown = ["Up", "Down"];
    private static readonly ImmutableArray<string> LeftRight = ["Left", "Right"];
    private static readonly ImmutableArray<string> Pages = ["PageUp", "PageDown"];
    private static readonly ImmutableArray<string> Digits = ["1", "2", "3", "4", "5", "6", "7", "8", "9"];
    private static readonly ImmutableArray<string> Letters = ["a", "b", "c", "d", "e", "f"];

    /// <summary>The keys for findings, in the order of the words of findings.</summary>
    public static ImmutableArray<string> FindingKeys { get; } =
    ["s", "m", "c", "k", "b", "e", "o", "g", "p", "h", "u", "l", "t", "x"];

    /// <summary>Every row, in the order of the foot.</summary>
    public static ImmutableArray<KeyRow> All { get; } =
    [
        .. Rack(),
        .. AtTheHammer(),
        .. Measuring(),
        .. Pagesful(),
        .. Planning(),
        .. LookingBack(),
        .. EyesAndBars(),
        .. Beginning(),
        new(null, Act.Help, ["?", "F1"], "?", "help", Words.DoesHelp),
        new(
            null,
            Act.TakeBack,
            ["Backspace", "Delete"],
            "Bksp",
            "take back",
            Words.DoesTakeBack,
            Need.Recorded,
            Records: true
        ),
        new(null, Act.Leave, ["Ctrl+C"], "Ctrl-C", "leave", Words.DoesLeave, OnlyInHelp: true),
    ];

    /// <summary>The keys of a screen.</summary>
    /// <param name="screen">The screen.</param>
    /// <returns>Its own rows, then those that all screens have.</returns>
    public static IEnumerable<KeyRow> Of(ScreenName screen) =>
        All.Where(row => row.Where is null || row.Where == screen);

    private static KeyRow[] Rack() =>
        [
            new(ScreenName.ToolRack, Act.GoHammer, ["h"], "h", "hammer", Words.DoesHammer, Need.Tools),
            new(ScreenName.ToolRack, Act.GoMeasure, ["m"], "m", "measure", Words.DoesMeasure, Need.Tools),
            new(ScreenName.ToolRack, Act.Enter, ["Enter"], "Enter", "card", Words.DoesCard, Need.Row),
            new(ScreenName.ToolRack, Act.GoForge, ["f"], "f", "forge", Words.DoesForge),
            new(ScreenName.ToolRack, Act.GoOrders, ["o"], "o", "orders", Words.DoesOrders),
            new(ScreenName.ToolRack, Act.GoCosts, ["c"], "c", "costs", Words.DoesCosts, Need.Tools),
            new(ScreenName.ToolRack, Act.GoEyes, ["y"], "y", "eyes", Words.DoesEyes),
            new(ScreenName.ToolRack, Act.GoBars, ["b"], "b", "bars", Words.DoesBars),
            new(ScreenName.ToolRack, Act.GoTrials, ["r"], "r", "trials", Words.DoesTrials, Need.Tools),
            new(ScreenName.ToolRack, Act.GoYear, ["v"], "v", "year", Words.DoesYear, Need.Tools),
            new(ScreenName.ToolRack, Act.GoLoans, ["n"], "n", "loans", Words.DoesLoans, Need.Tools),
            new(ScreenName.ToolRack, Act.GoStockTake, ["k"], "k", "stock-take", Words.DoesStockTake, Need.Tools),
            new(ScreenName.ToolRack, Act.GoLedger, ["l"], "l", "ledger", Words.DoesLedger),
            new(ScreenName.ToolRack, Act.GoShop, ["s"], "s", "shop", Words.DoesShop),
            new(ScreenName.ToolRack, Act.GoNewTool, ["a"], "a", "add", Words.DoesNewTool),
            new(ScreenName.ToolRack, Act.GoTable, ["t"], "t", "table", Words.DoesTable),
            new(ScreenName.ToolRack, Act.Export, ["e"], "e", "export", Words.DoesExport, Need.Tools),
            new(ScreenName.ToolRack, Act.Move, UpDown, "↑↓", "choose", Words.DoesMove, Need.Choice),
            new(ScreenName.ToolRack, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.ToolRack, Act.Leave, ["q"], "q", "leave", Words.DoesLeave),
            new(ScreenName.ToolRack, Act.Back, ["Esc"], "Esc", "cancel", Words.DoesCancel, Need.Typing),
            new(ScreenName.Help, Act.Back, ["Esc", "Enter"], "Esc", "back", Words.DoesBack),
            new(ScreenName.Help, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
        ];

    private static KeyRow[] Pagesful() =>
        [
            new(ScreenName.WearCard, Act.Gauge, ["g"], "g", "gauge mark", Words.DoesGauge, Need.Gauges),
            new(ScreenName.WearCard, Act.Words, ["w"], "w", "words or chart", Words.DoesWords),
            new(ScreenName.WearCard, Act.Enter, ["Enter"], "Enter", "take", Words.DoesAnswer, Need.Typing),
            new(ScreenName.WearCard, Act.Scrap, ["x"], "x", "scrap", Words.DoesScrap, Need.InHand),
            new(ScreenName.WearCard, Act.Move, UpDown, "↑↓", "next tool or line", Words.DoesNextTool, Need.Choice),
            new(ScreenName.WearCard, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.WearCard, Act.Back, ["Esc"], "Esc", "back", Words.DoesBack),
            new(ScreenName.TrialPages, Act.Move, UpDown, "↑↓", "scroll", Words.DoesMove, Need.MorePages),
            new(ScreenName.TrialPages, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.TrialPages, Act.Back, ["Esc"], "Esc", "back", Words.DoesBack),
            new(
                ScreenName.LedgerPages,
                Act.Enter,
                ["Enter"],
                "Enter",
                "take",
                Words.DoesAnswer,
                Need.Typing,
                Records: true
            ),
            new(ScreenName.LedgerPages, Act.CrossOut, ["x"], "x", "cross out", Words.DoesCrossOut, Need.Row),
            new(ScreenName.LedgerPages, Act.Search, ["/"], "/", "find", Words.DoesSearch),
            new(ScreenName.LedgerPages, Act.Move, UpDown, "↑↓", "choose", Words.DoesMove, Need.Choice),
            new(ScreenName.LedgerPages, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.LedgerPages, Act.Back, ["Esc"], "Esc", "back", Words.DoesBack),
            new(ScreenName.ShopPage, Act.Enter, ["Enter"], "Enter", "change", Words.DoesChange, Records: true),
            new(ScreenName.ShopPage, Act.Move, UpDown, "↑↓", "choose", Words.DoesMove, Need.Choice),
            new(ScreenName.ShopPage, Act.Page, Pages, "PgUp PgDn", "page", Words.DoesPage, Need.MorePages),
            new(ScreenName.ShopPage, Act.Back, ["Esc"], "Esc", "back", Words.DoesBack),
        ];

    private static KeyRow[] Beginning() =>
        [
            new(ScreenName.FirstStart, Act.GoTable, ["t"], "t", "enter the tools I have", Words.DoesTable),
            new(ScreenName.FirstStart, Act.GoNewTool, ["a"], "a", "add one tool", Words.DoesNewTool),
            new(ScreenName.FirstStart, Act.Demo, ["d"], "d", "demo", Words.DoesDemo),
            new(ScreenName.FirstStart, Act.Import, ["i"], "i", "import", Words.DoesImport, Need.EmptyStore),
            new(
                ScreenName.FirstStart,
                Act.Enter,
                ["Enter"],
                "Enter",
                "take",
                Words.DoesAnswer,
                Need.Typing,
                Records: true
            ),
            new(ScreenName.FirstStart, Act.Back, ["Esc"], "Esc", "cancel", Words.DoesCancel, Need.Typing),
            new(ScreenName.FirstStart, Act.GoEyes, ["y"], "y", "eyes", Words.DoesEyes),
            new(ScreenName.FirstStart, Act.GoBars, ["b"], "b", "bars", Words.DoesBars),
            new(ScreenName.FirstStart, Act.GoShop, ["s"], "s", "shop", Words.DoesShop),
            new(ScreenName.FirstStart, Act.Leave, ["q"], "q", "leave", Words.DoesLeave),
            new(ScreenName.ToolTable, Act.Enter, ["Enter"], "Enter", "next", Words.DoesNextCell, Records: true),
            new(ScreenName.ToolTable, Act.Move, UpDown, "↑↓", "another word", Words.DoesAnotherWord, Need.Choice),
            new(ScreenName.ToolTable, Act.Back, ["Esc"], "Esc", "back", Words.DoesBack),
            new(ScreenName.NewTool, Act.Enter, ["Enter"], "Enter", "next", Words.DoesNextCell, Records: true),
            new(ScreenName.NewTool, Act.Move, UpDown, "↑↓", "another word", Words.DoesAnotherWord, Need.Choice),
            new(ScreenName.NewTool, Act.Back, ["Esc"], "Esc", "back", Words.DoesBack),
        ];
}
