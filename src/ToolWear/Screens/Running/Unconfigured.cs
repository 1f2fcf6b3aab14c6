using System.Runtime.CompilerServices;
using Terminal.Gui.Configuration;
using Terminal.Gui.ViewBase;

namespace ToolWear.Screens.Running;

/// <summary>Loads the library of views so that no file of the current folder changes what the program does.</summary>
/// <remarks>It reads ./.tui and ~/.tui as it is loaded; while that happens the program's own folder is the current one.
/// The variable TUI_CONFIG is taken out of the environment by the program's first line. A program compiled ahead of time
/// loads it before its first line: so what would reach the screens is set to the library's own values afterwards.</remarks>
internal static class Unconfigured
{
    public static void Load()
    {
        string current = Environment.CurrentDirectory;
        Environment.CurrentDirectory = AppContext.BaseDirectory;
        try
        {
            LoadHere();
        }
        finally
        {
            Environment.CurrentDirectory = current;
        }

        GoBackToUsual();
    }

    // A method that names a type of the library may load it before its own first statement: these stand apart.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void LoadHere() => RuntimeHelpers.RunModuleConstructor(typeof(View).Module.ModuleHandle);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void GoBackToUsual()
    {
        ApplicationSettings.Defaults = new();
        DriverSettings.Defaults = new();
        KeySettings.Defaults = new();
        TraceSettings.Defaults = new();
    }
}
