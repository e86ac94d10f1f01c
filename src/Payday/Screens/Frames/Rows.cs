namespace Payday.Screens.Frames;

/// <summary>Which rows of a long list are in view.</summary>
internal static class Rows
{
    /// <summary>The first row to show so that the row under the cursor is in view, as near as can be to where the view was.</summary>
    /// <param name="first">The first row shown before.</param>
    /// <param name="cursor">The row under the cursor.</param>
    /// <param name="count">All rows.</param>
    /// <param name="room">How many fit.</param>
    public static int First(int first, int cursor, int count, int room)
    {
        int lowest = Math.Max(0, cursor - room + 1);
        return Math.Clamp(Math.Clamp(first, lowest, Math.Max(lowest, cursor)), 0, Math.Max(0, count - room));
    }
}
