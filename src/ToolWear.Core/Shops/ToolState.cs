namespace ToolWear.Core.Shops;

/// <summary>Where a tool stands.</summary>
public enum ToolState
{
    /// <summary>It works.</summary>
    InService,

    /// <summary>Laid aside for the time being.</summary>
    SetAside,

    /// <summary>Done.</summary>
    Scrapped,
}

/// <summary>The words of <see cref="ToolState"/>.</summary>
public static class ToolStates
{
    /// <summary>The words.</summary>
    public static Measure.Vocabulary<ToolState> Words { get; } =
        new(
            "state",
            (ToolState.InService, "in service"),
            (ToolState.SetAside, "set aside"),
            (ToolState.Scrapped, "scrapped")
        );
}
