namespace ToolWear.Core.Sections;

/// <summary>Where along the outer of two sections the inner one comes nearest to it.</summary>
public enum NearestAt
{
    /// <summary>The third towards +x: the nose of a teardrop, one end of the others.</summary>
    Nose,

    /// <summary>The middle third.</summary>
    Cheek,

    /// <summary>The third towards -x.</summary>
    Back,
}
