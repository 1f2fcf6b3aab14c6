namespace ToolWear.Tests;

/// <summary>Where the project's own files lie.</summary>
internal static class Repository
{
    /// <summary>The folder that holds ToolWear.sln, above the built tests.</summary>
    public static string Folder { get; } = Find();

    private static string Find()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "ToolWear.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("No ToolWear.sln above the tests.");
    }
}
