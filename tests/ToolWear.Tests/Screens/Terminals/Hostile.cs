namespace ToolWear.Tests.Screens.Terminals;

/// <summary>Configuration files of the library of views that would change what the program does.</summary>
internal static class Hostile
{
    public const string Configuration = """{ "Application": { "AppModel": "Inline", "IsMouseDisabled": true } }""";

    /// <summary>Puts them into a folder, under the names that the library looks for.</summary>
    public static void Into(string folder)
    {
        string hidden = Path.Combine(folder, ".tui");
        Directory.CreateDirectory(hidden);
        foreach (string name in (string[])["config.json", "toolwear.config.json", "ToolWear.ThrowingClock.config.json"])
        {
            File.WriteAllText(Path.Combine(hidden, name), Configuration);
        }
    }
}
