namespace ToolWear.Screens;

/// <summary>Every screen, a line each.</summary>
internal static class ScreenList
{
#pragma warning disable CA2000 // the host that they are added to disposes of them
    public static IEnumerable<Screen> All(Host host) => [new ToolRack.ToolRackScreen(host), new Help.HelpScreen(host)];
#pragma warning restore CA2000
}
