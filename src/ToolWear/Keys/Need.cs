namespace ToolWear.Keys;

/// <summary>What must be there for a key to work; the screen knows whether it is.</summary>
internal enum Need
{
    /// <summary>Nothing.</summary>
    Nothing,

    /// <summary>A selected row.</summary>
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

    /// <summary>A selected tool.</summary>
    InHand,

    /// <summary>Names of hands in the shop.</summary>
    Hands,

    /// <summary>Tools in the shop.</summary>
    Tools,

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

    /// <summary>An eye.</summary>
    Eye,

    /// <summary>Something proposed or changed that is not recorded yet.</summary>
    Changed,

    /// <summary>Something to choose from: two rows at least, or the words of an answer.</summary>
    Choice,

    /// <summary>More than one year.</summary>
    Years,

    /// <summary>No session that is open already.</summary>
    NewSession,

    /// <summary>A key for the pedal, and tools that it can mean.</summary>
    Pedal,
}
