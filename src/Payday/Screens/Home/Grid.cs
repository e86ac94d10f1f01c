using System.Collections.Immutable;
using Payday.Screens.Frames;

namespace Payday.Screens.Home;

/// <summary>Short pieces of one width beside each other.</summary>
internal static class Grid
{
    /// <summary>From this width on, in columns of the screen, pieces stand beside each other.</summary>
    public const int Wide = 74;

    private static readonly (int From, int Columns)[] Rooms = [(118, 3), (Wide, 2), (0, 1)];

    /// <summary>How many stand beside each other on a screen of a width, and how wide each is.</summary>
    /// <param name="width">The width of the screen, in columns.</param>
    public static (int Columns, int Width) Room(int width)
    {
        int columns = Rooms.First(room => width >= room.From).Columns;
        return (columns, (width - 1) / columns);
    }

    /// <summary>Lays pieces out, to be read down and then across.</summary>
    /// <param name="pieces">Each as wide as there is room for it, or narrower.</param>
    /// <param name="width">The width of the screen, in columns.</param>
    /// <param name="across">To be read across and then down: where the last lines are out of view, it is the last pieces.</param>
    public static IEnumerable<FrameLine> Lay(ImmutableArray<FrameLine> pieces, int width, bool across = false)
    {
        (int columns, int each) = Room(width);
        int lines = (pieces.Length + columns - 1) / columns;
        return Enumerable.Range(0, lines).Select(line => Enumerable.Range(0, columns)
            .Select(column => across ? (line * columns) + column : line + (column * lines))
            .Where(at => at < pieces.Length)
            .Select(at => pieces[at].Fit(each))
            .Aggregate((left, right) => left + right));
    }
}
