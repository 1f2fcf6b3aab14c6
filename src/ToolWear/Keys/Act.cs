namespace ToolWear.Keys;

/// <summary>What a key does.</summary>
internal enum Act
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

    /// <summary>Goes to what is brought in: a table, a folder.</summary>
    Import,

    /// <summary>Lets a table correct what the shop has.</summary>
    Update,

    /// <summary>Keeps the columns that nobody knows in the note.</summary>
    KeepUnknown,

    /// <summary>Asks in which columns an empty cell repeats the one above.</summary>
    CarryDown,

    /// <summary>Asks for the day of what names none.</summary>
    Day,

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

    /// <summary>Leaves out a proposed row, or the columns that nobody knows.</summary>
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

    /// <summary>Where on a tool something was found.</summary>
    Part,

    /// <summary>Enters a rework.</summary>
    Rework,

    /// <summary>Goes to all that can be done to a tool.</summary>
    GoTool,

    /// <summary>Goes to what was lost.</summary>
    GoLosses,
}
