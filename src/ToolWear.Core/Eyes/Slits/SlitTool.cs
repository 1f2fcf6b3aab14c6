namespace ToolWear.Core.Eyes.Slits;

/// <summary>The tools that open an eye.</summary>
public enum SlitTool
{
    /// <summary>A sharp slitter: parts the metal, takes nothing out.</summary>
    Slitter,

    /// <summary>A slot punch with round ends: takes a slug out.</summary>
    SlotPunch,

    /// <summary>A punch with square ends: takes a slug out.</summary>
    SquarePunch,
}
