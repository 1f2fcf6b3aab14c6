namespace ToolWear.Pens;

/// <summary>What a piece of a screen is, from which its look follows. None says by colour alone what it means.</summary>
internal enum Ink
{
    /// <summary>Plain text.</summary>
    Plain,

    /// <summary>What can wait.</summary>
    Quiet,

    /// <summary>Headings and figures that matter.</summary>
    Strong,

    /// <summary>The title over the screen.</summary>
    Title,

    /// <summary>The row that the keys speak of.</summary>
    Chosen,

    /// <summary>A key at the foot.</summary>
    Key,

    /// <summary>What wants attention; a word or a mark always says so too.</summary>
    Warn,

    /// <summary>What was recorded.</summary>
    Done,

    /// <summary>What is being typed.</summary>
    Typed,
}
