using Xunit;

namespace ToolWear.Tests.Screens;

/// <summary>The tests that run the screen library's loop, which has settings for the whole process, or a terminal: one at
/// a time, beside all others.</summary>
[CollectionDefinition(Name)]
public sealed class ScreenLibrary
{
    public const string Name = "the screen library";

    /// <summary>The tests that change the process's current folder: with no other beside them.</summary>
    public const string Alone = "the current folder";
}

/// <summary>See <see cref="ScreenLibrary.Alone"/>.</summary>
[CollectionDefinition(ScreenLibrary.Alone, DisableParallelization = true)]
public sealed class CurrentFolder;
