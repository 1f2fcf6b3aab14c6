using ToolWear.Keys;

namespace ToolWear.Screens.Drawing;

/// <summary>Where one is in a list: the chosen row, and the first that is shown.</summary>
internal sealed class ListPlace
{
    /// <summary>The chosen row, from 0.</summary>
    public int Chosen { get; private set; }

    /// <summary>The first row shown.</summary>
    public int First { get; private set; }

    /// <summary>Rows in all when it was drawn last.</summary>
    public int Count { get; private set; }

    /// <summary>Rows that were shown when it was drawn last.</summary>
    public int Room { get; private set; } = 1;

    /// <summary>Chooses a row.</summary>
    /// <param name="row">The row; what lies outside the list is brought inside.</param>
    /// <param name="count">Rows in all.</param>
    public void Choose(int row, int count) => Chosen = Math.Clamp(row, 0, Math.Max(0, count - 1));

    /// <summary>Does what the keys for moving say.</summary>
    /// <param name="act">Move or Page.</param>
    /// <param name="which">0 up, 1 down.</param>
    /// <param name="count">Rows in all.</param>
    public void Move(Act act, int which, int count)
    {
        int step = (which == 0 ? -1 : 1) * (act == Act.Page ? Room : 1);
        Choose(Chosen + step, count);
        First += act == Act.Page ? step : 0;
    }

    /// <summary>Shows the list from a row on, and chooses one that is in sight.</summary>
    /// <param name="first">The row; what lies outside the list is brought inside.</param>
    public void ScrollTo(int first)
    {
        First = Math.Clamp(first, 0, Math.Max(0, Count - Room));
        Chosen = Math.Clamp(Chosen, First, Math.Max(First, Math.Min(Count, First + Room) - 1));
    }

    /// <summary>Brings the chosen row among those shown.</summary>
    /// <param name="count">Rows in all.</param>
    /// <param name="room">Rows that are shown.</param>
    /// <returns>The first row shown.</returns>
    public int Show(int count, int room)
    {
        (Count, Room) = (count, Math.Max(1, room));
        Choose(Chosen, count);
        First = Math.Clamp(First, Math.Max(0, Chosen - room + 1), Chosen);
        First = Math.Clamp(First, 0, Math.Max(0, count - room));
        return First;
    }
}
