using System.Collections.Immutable;
using CsCheck;
using Payday.Text;

namespace Payday.Tests.Text;

public class LongTableTests
{
    private static readonly ImmutableArray<TextColumn> Columns = [new("", Align.Right), new("from") { Shrinks = true, MinWidth = 4 }, new("amount", Align.Decimal)];

    [Fact]
    public void Rows_OfAnyTable_AreThoseOfATextTable() =>
        Gen.Select(Gen.Int[0, 999], Gen.Char.AlphaNumeric.Array[0, 12].Select(letters => new string(letters)), Gen.Int[0, 9999]).List[1, 9].Sample(rows =>
        {
            ImmutableArray<ImmutableArray<string>> cells = [.. rows.Select(row => ImmutableArray.Create($"{row.Item1}", row.Item2, $"{row.Item3}.00"))];
            ImmutableArray<string> widest = [.. Enumerable.Range(0, 3).Select(column => cells.Select(row => row[column]).MaxBy(TextColumns.Width)!)];
            TextTableLines whole = new TextTable(Columns, cells).Lay(20);
            var table = new LongTable(Columns, widest, cells.Length, i => cells[i], 20);

            Assert.Equal(whole.Header, table.Header);
            Assert.Equal(whole.Rows, table);
        });

    [Fact]
    public void Rows_NotAskedFor_AreNotLaidOut()
    {
        var asked = new List<int>();
        var table = new LongTable(Columns, ["9", "abcd", "9.00"], 1_000, i => { asked.Add(i); return ["1", "a", "1.00"]; }, 20);

        Assert.Equal("1  a       1.00", table[700]);
        Assert.Equal([700], asked);
    }
}
