using System.Runtime.CompilerServices;
using Xunit;

namespace ToolWear.Testing.Goldens;

/// <summary>Texts that a user reads, kept beside the tests so that a review shows what changed.</summary>
public static class Golden
{
    /// <summary>Set to 1, it accepts what is there as right: a deliberate act, looked at in the review.</summary>
    public const string Accept = "TOOLWEAR_ACCEPT_GOLDENS";

    /// <summary>Compares a text with the one that was accepted. A missing golden fails.</summary>
    /// <param name="name">Its name, with its ending: "rack.txt".</param>
    /// <param name="actual">What came out.</param>
    /// <param name="caller">The test's file, filled in by the compiler.</param>
    public static void Same(string name, string actual, [CallerFilePath] string caller = "")
    {
        string path = Path.Combine(FolderOf(caller), name);
        if (Environment.GetEnvironmentVariable(Accept) == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, actual);
            return;
        }

        Assert.True(
            File.Exists(path),
            $"There is no golden {path}. Look at the text and accept it with {Accept}=1:\n{actual}"
        );
        Assert.Equal(File.ReadAllText(path), actual);
    }

    private static string FolderOf(string caller)
    {
        // the test project's folder: the nearest one above that holds a project
        string? folder = Path.GetDirectoryName(caller);
        while (folder is not null && Directory.GetFiles(folder, "*.csproj").Length == 0)
        {
            folder = Path.GetDirectoryName(folder);
        }

        return Path.Combine(folder ?? throw new InvalidOperationException($"No project above {caller}."), "goldens");
    }
}
