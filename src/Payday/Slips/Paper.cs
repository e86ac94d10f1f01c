using System.Collections.Immutable;
using System.Globalization;

namespace Payday.Slips;

/// <summary>Text laid out for paper, ready to be cut into pages.</summary>
/// <param name="Head">Lines at the top of every page.</param>
/// <param name="Blocks">Lines that stay together, each block in order; empty lines at a block's start keep it off the one above.</param>
internal sealed record Paper(ImmutableArray<string> Head, ImmutableArray<ImmutableArray<string>> Blocks)
{
    // A page number and an empty line above it.
    private const int FootLines = 2;

    /// <summary>All lines on one endless page.</summary>
    public ImmutableArray<string> Lines => [.. Head, .. Blocks.SelectMany(block => block)];

    /// <summary>The lines page by page, each page numbered at its foot if there are several.</summary>
    /// <param name="height">Lines on a page.</param>
    /// <returns>
    /// At least one page. A block is only parted where it is longer than a page by itself. A head that would
    /// take more than half of every page stands on the first alone.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">A page has no room for a line and its number.</exception>
    public ImmutableArray<ImmutableArray<string>> Pages(int height)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(height, FootLines + 1);
        if (Lines.Length <= height)
        {
            return [Lines];
        }

        int room = height - Head.Length - FootLines;
        if (room < height / 2 && !Head.IsEmpty)
        {
            return new Paper([], [Head, .. Blocks]).Pages(height);
        }

        List<List<string>> bodies = [[]];
        foreach (IEnumerable<string> part in Blocks.SelectMany(block => block.Chunk(room)))
        {
            if (bodies[^1].Count + part.Count() > room)
            {
                bodies.Add([]);
            }

            // Nothing is above it at the top of a page that it needs to keep off from.
            bool first = bodies[^1].Count == 0 && bodies.Count > 1;
            bodies[^1].AddRange(first ? part.SkipWhile(line => line.Length == 0) : part);
        }

        return [.. bodies.Select((body, i) => Numbered(body, i + 1, bodies.Count, room))];
    }

    private ImmutableArray<string> Numbered(List<string> body, int page, int pages, int room) =>
    [
        .. Head, .. body, .. Enumerable.Repeat("", room - body.Count + 1),
        string.Create(CultureInfo.InvariantCulture, $"Page {page} of {pages}"),
    ];
}
