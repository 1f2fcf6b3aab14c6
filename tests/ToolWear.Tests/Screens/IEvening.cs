using ToolWear.Tests.Commands;

namespace ToolWear.Tests.Screens;

/// <summary>The screens as somebody plays them: keys in, text out.</summary>
internal interface IEvening : IDisposable
{
    /// <summary>The screen as text, a line a row, without the spaces at its ends.</summary>
    string Text { get; }

    /// <summary>Presses keys by their names: "h", "Enter", "Down".</summary>
    void Press(params string[] names);

    /// <summary>Types a text, a key a character.</summary>
    void Type(string text);

    /// <summary>Waits until the forecasts of the shop as it is now are there.</summary>
    void WaitForForecasts();

    /// <summary>Waits until all that the screen shows is there.</summary>
    void WaitForAll();

    /// <summary>Opens the screens on a site's store: beside the tests, or of the program that was named for them.</summary>
    static IEvening On(TestSite site, int width, int height) =>
        Outside.Program is null
            ? new Evenings(site, width: width, height: height)
            : new EveningOutside(site, width, height);
}
