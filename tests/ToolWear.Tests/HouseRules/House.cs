using System.Reflection;
using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using Assembly = System.Reflection.Assembly;

namespace ToolWear.Tests.HouseRules;

/// <summary>The source projects as they were built, and their files.</summary>
internal static class House
{
    public static Assembly Core { get; } = typeof(Core.Shops.Shop).Assembly;

    public static Assembly Storage { get; } = Assembly.Load("ToolWear.Storage");

    public static Assembly Program { get; } = Assembly.Load("toolwear");

    public static Architecture Architecture { get; } = new ArchLoader().LoadAssemblies(Core, Storage, Program).Build();

    /// <summary>The folder of the solution.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>The types that one of the projects declares; never none.</summary>
    public static IReadOnlyList<IType> TypesOf(Assembly assembly)
    {
        IType[] types = [.. Architecture.Types.Where(type => IsOf(type, assembly))];
        Xunit.Assert.NotEmpty(types);
        return types;
    }

    /// <summary>The types of a room of Core; never none.</summary>
    public static IReadOnlyList<IType> TypesOfRoom(string room)
    {
        IType[] types = [.. TypesOf(Core).Where(type => IsIn(type, "ToolWear.Core." + room))];
        Xunit.Assert.NotEmpty(types);
        return types;
    }

    /// <summary>Whether a type is declared by a project.</summary>
    public static bool IsOf(IType type, Assembly assembly) =>
        type.Assembly?.Name.Split(',')[0] == assembly.GetName().Name;

    /// <summary>Whether a type lies in a namespace or below it.</summary>
    public static bool IsIn(IType type, string space) =>
        type.FullName.StartsWith(space + ".", StringComparison.Ordinal);

    /// <summary>What types use that they must not, one line for each use.</summary>
    public static string[] Breaches(IEnumerable<IType> types, Func<IType, bool> isForbidden) =>
        [
            .. types
                .SelectMany(type => type.Dependencies.Select(use => (From: type, To: use.Target)))
                .Where(use => isForbidden(use.To))
                .Select(use => use.From.FullName + " uses " + use.To.FullName)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];

    /// <summary>The files below a folder of the solution, none that a build made.</summary>
    public static IReadOnlyList<string> Files(string folder, string pattern) =>
        [
            .. Directory
                .EnumerateFiles(Path.Combine(Root, folder), pattern, SearchOption.AllDirectories)
                .Where(file => !Path.GetRelativePath(Root, file).Split(Path.DirectorySeparatorChar).Any(IsMade))
                .Order(StringComparer.Ordinal),
        ];

    private static bool IsMade(string part) => part is "bin" or "obj" or ".git";

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "ToolWear.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("No ToolWear.sln above the tests.");
    }
}
