using ToolWear.Core.Shops;
using ToolWear.Core.Wear;

namespace ToolWear.Screens;

/// <summary>Works forecasts out beside the screens, which never wait for them.</summary>
/// <param name="onScreen">Does something on the screens' thread.</param>
public sealed class Forecaster(Action<Action> onScreen) : IDisposable
{
    private CancellationTokenSource stop = new();
    private Shop? wanted;
    private bool isRunning;
    private bool isEnded;

    /// <summary>The forecasts last worked out, null before the first.</summary>
    public ShopForecasts? Latest { get; private set; }

    /// <summary>Whether forecasts of a newer shop are being worked out.</summary>
    public bool IsBehind => wanted is not null && !ReferenceEquals(wanted, Latest?.Shop);

    /// <summary>What to do when they are there.</summary>
    public Action? Ready { get; set; }

    /// <summary>Asks for the forecasts of a shop; those of an older one are not worth ending.</summary>
    /// <param name="shop">The shop.</param>
    public void Want(Shop shop)
    {
        if (ReferenceEquals(shop, wanted))
        {
            return;
        }

        wanted = shop;
        if (isRunning)
        {
            stop.Cancel();
            return;
        }

        Begin();
    }

    /// <inheritdoc />
    public void Dispose()
    {
        isEnded = true;
        stop.Cancel();
        stop.Dispose();
    }

    private void Begin()
    {
        if (isEnded || wanted is not { } shop)
        {
            return;
        }

        isRunning = true;
        stop.Dispose();
        stop = new CancellationTokenSource();
        CancellationToken token = stop.Token;
        _ = Task.Run(
            () =>
            {
                try
                {
                    ShopForecasts made = ShopForecasts.Of(shop, token);
                    onScreen(() => End(made));
                }
                catch (OperationCanceledException)
                {
                    onScreen(() => End(null));
                }
#pragma warning disable CA1031 // an exception here is a bug: it goes on where the program ends properly
                catch (Exception e)
#pragma warning restore CA1031
                {
                    onScreen(() => throw new InvalidOperationException(e.Message, e));
                }
            },
            CancellationToken.None
        );
    }

    private void End(ShopForecasts? made)
    {
        isRunning = false;
        Latest = made ?? Latest;
        if (IsBehind)
        {
            Begin();
        }

        Ready?.Invoke();
    }
}
