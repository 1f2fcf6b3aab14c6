namespace ToolWear.Core.Eyes;

/// <summary>How a drift is driven.</summary>
public enum Driving
{
    /// <summary>To its mark from each face in turn: a wedged eye, narrowest at the waist.</summary>
    BothFaces,

    /// <summary>To its mark from the top only: a slip-on eye, narrowest at the far face.</summary>
    OneFace,

    /// <summary>Right through: the full-size part passes, so wear cannot be made up by driving deeper.</summary>
    Through,
}
