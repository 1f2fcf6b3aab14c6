namespace ToolWear.Screens;

/// <summary>Where one is in a list: the chosen row, and the first that is shown.</summary>
public sealed class ListPlace
{
    /// <summary>The chosen row, from 0.</summary>
    public int Chosen { get; private set; }

    /// <summary>The first row shown.</summary>
    public int First { get; private set; }

    /// <summary>Chooses a row.</summary>
    /// <param name="row">The row; what lies outside the list is brought inside.</param>
    /// <param name="count">Rows in all.</param>
    public void Choose(int row, int count) => Chosen = Math.Clamp(row, 0, Math.Max(0, count - 1));

    /// <summary>Does what the keys for moving say.</summary>
    /// <param name="act">Move or Page.</param>
    /// <param name="which">0 up, 1 down.</param>
    /// <param name="count">Rows in all.</param>
    /// <param name="room">Rows that are shown.</param>
    public void Move(Act act, int which, int count, int room)
    {
        int step = act == Act.Page ? Math.Max(1, room) : 1;
        Choose(Chosen + (which == 0 ? -step : step), count);
        First = act == Act.Page ? First + (which == 0 ? -step : step) : First;
    }

    /// <summary>Brings the chosen row among those shown.</summary>
    /// <param name="count">Rows in all.</param>
    /// <param name="room">Rows that are shown.</param>
    /// <returns>The first row shown.</returns>
    public int Show(int count, int room)
    {
        Choose(Chosen, count);
        First = Math.Clamp(First, Math.Max(0, Chosen - room + 1), Chosen);
        First = Math.Clamp(First, 0, Math.Max(0, count - room));
        return First;
    }
}
