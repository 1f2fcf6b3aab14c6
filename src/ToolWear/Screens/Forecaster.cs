using ToolWear.Core.Wear;

namespace ToolWear.Screens;

/// <summary>Works forecasts out beside the screens, which never wait for them.</summary>
/// <param name="onScreen">Does something on the screens' thread.</param>
public sealed class Forecaster(Action<Action> onScreen) : Beside<ShopForecasts>(onScreen, ShopForecasts.Of);
