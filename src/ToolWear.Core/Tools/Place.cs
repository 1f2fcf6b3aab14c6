using ToolWear.Core.Measure;

namespace ToolWear.Core.Tools;

/// <summary>A tool's place in the series of drifts for one eye. Common practice, no source.</summary>
public enum Place
{
    /// <summary>Not in a series.</summary>
    None,

    /// <summary>Opens the slit before the rough drift.</summary>
    Opener,

    /// <summary>Takes the hard forging of the cheeks; made to be used up.</summary>
    Rough,

    /// <summary>Nearer the eye's shape.</summary>
    Second,

    /// <summary>The eye's true section; only sizes.</summary>
    Finish,
}

/// <summary>The words of <see cref="Place"/>.</summary>
public static class Places
{
    /// <summary>The words; no place has the empty word in files and "none" in settings.</summary>
    public static Vocabulary<Place> Words { get; } =
        new(
            "place",
            (Place.Opener, "opener"),
            (Place.Rough, "rough"),
            (Place.Second, "second"),
            (Place.Finish, "finish"),
            (Place.None, "none")
        );
}
