using Payday.Screens.Frames;
using Terminal.Gui.Input;

namespace Payday.Screens.Shell;

/// <summary>A cursor on rows of which not all need fit: where it is, which rows are in view, and the keys that move it.</summary>
/// <param name="count">Says how many rows there are.</param>
internal sealed class RowCursor(Func<int> count)
{
    private int put;

    /// <summary>The row it is on, from 0; never below the last one, wherever it was put, for rows may go and new ones not come.</summary>
    public int Row
    {
        get => Of(count());
        set => put = value;
    }

    /// <summary>The same, where the number of rows is known.</summary>
    public int Of(int rows) => Math.Clamp(put, 0, Math.Max(0, rows - 1));

    /// <summary>The first row in view.</summary>
    public int First { get; private set; }

    /// <summary>How many rows fit.</summary>
    public int Room { get; private set; } = 1;

    /// <summary>The keys that move it.</summary>
    public IEnumerable<Binding> Keys =>
    [
        new(Key.CursorUp, "Up", "", "To the row above.", () => Go(-1)),
        new(Key.CursorDown, "Down", "", "To the row below.", () => Go(1)),
        new(Key.PageUp, "PgUp", "", "A screen up.", () => Go(-Room)),
        new(Key.PageDown, "PgDn", "", "A screen down.", () => Go(Room)),
    ];

    /// <summary>Settles which rows are in view, so that its own is among them.</summary>
    /// <param name="rows">How many rows are drawn.</param>
    /// <param name="room">How many lines there are for them; at least one is taken.</param>
    public void Show(int rows, int room)
    {
        Room = Math.Max(1, room);
        First = Rows.First(First, Of(rows), rows, Room);
    }

    /// <summary>How many rows are below those in view.</summary>
    public int Below(int rows) => Math.Max(0, rows - First - Room);

    /// <summary>Goes to the first row.</summary>
    public void ToTop() => (put, First) = (0, 0);

    private Way Go(int by)
    {
        int rows = count();
        put = Math.Clamp(Of(rows) + by, 0, Math.Max(0, rows - 1));
        return Way.Stay;
    }
}
