namespace ToolWear.Keys;

/// <summary>The screens.</summary>
internal enum ScreenName
{
    /// <summary>The tools in service.</summary>
    ToolRack,

    /// <summary>The keys of the screen before.</summary>
    Help,

    /// <summary>Which tools and which pattern tonight.</summary>
    Choosing,

    /// <summary>The tally.</summary>
    Hammer,

    /// <summary>The end of a session.</summary>
    Closing,

    /// <summary>To measure, and the caliper round.</summary>
    CaliperRound,

    /// <summary>One tool.</summary>
    WearCard,

    /// <summary>What can be done to one tool.</summary>
    ToolPage,

    /// <summary>What to forge.</summary>
    ForgeList,

    /// <summary>Steels, lubricants, cooling compared.</summary>
    TrialPages,

    /// <summary>Every entry.</summary>
    LedgerPages,

    /// <summary>The shop's settings.</summary>
    ShopPage,

    /// <summary>An empty store.</summary>
    FirstStart,

    /// <summary>A table or folder that is brought in.</summary>
    Import,

    /// <summary>The table of the tools I have.</summary>
    ToolTable,

    /// <summary>One tool, question by question.</summary>
    NewTool,

    /// <summary>The open orders.</summary>
    Orders,

    /// <summary>What tooling costs.</summary>
    Costs,

    /// <summary>The patterns.</summary>
    Patterns,

    /// <summary>Eyes and handles.</summary>
    Eyes,

    /// <summary>The series for one eye.</summary>
    SeriesPages,

    /// <summary>The bars.</summary>
    StockRack,

    /// <summary>A year looked back on.</summary>
    Year,

    /// <summary>What was lost.</summary>
    Losses,

    /// <summary>The tools that are lent out.</summary>
    Loans,

    /// <summary>Every tool is looked for.</summary>
    StockTake,

    /// <summary>What a helper is handed.</summary>
    HandOver,
}
