using System.Collections;
using System.Collections.Immutable;

namespace Payday.Text;

/// <summary>The rows of a table of many, of which only those that are looked at are laid out.</summary>
/// <param name="columns">As those of a <see cref="TextTable"/>.</param>
/// <param name="widest">For each column a cell that is as wide as the widest of its rows.</param>
/// <param name="count">How many rows there are.</param>
/// <param name="cells">The cells of a row, by its place from 0.</param>
/// <param name="width">The width in columns.</param>
/// <param name="gap">Blanks between columns, zero or more.</param>
/// <param name="decimalMark">The mark that <see cref="Align.Decimal"/> lines up.</param>
internal sealed class LongTable(
    ImmutableArray<TextColumn> columns, ImmutableArray<string> widest, int count, Func<int, ImmutableArray<string>> cells, int width, int gap = 2, string decimalMark = ".")
    : IReadOnlyList<string>
{
    /// <summary>The header, as <see cref="TextTableLines.Header"/>.</summary>
    public ImmutableArray<string> Header => Laid([widest]).Header;

    /// <inheritdoc/>
    public int Count => count;

    /// <inheritdoc/>
    public string this[int index] => Laid([widest, cells(index)]).Rows[1];

    /// <inheritdoc/>
    public IEnumerator<string> GetEnumerator() => Enumerable.Range(0, count).Select(i => this[i]).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private TextTableLines Laid(ImmutableArray<ImmutableArray<string>> rows) => new TextTable(columns, rows, gap: gap, decimalMark: decimalMark).Lay(width);
}
