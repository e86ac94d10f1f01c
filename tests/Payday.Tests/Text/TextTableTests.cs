using System.Collections.Immutable;
using Payday.Text;

namespace Payday.Tests.Text;

public class TextTableTests
{
    private static readonly ImmutableArray<TextColumn> Columns =
    [
        new("Pot") { Shrinks = true, MinWidth = 3 }, new("Rate", Align.Decimal), new("Amount", Align.Right),
    ];

    private static readonly ImmutableArray<ImmutableArray<string>> Rows =
    [
        ["Groceries", "19.99", "1,200.00"], ["買い物", "5", "7.00"], ["e\u0301clairs", "0.125", "0.50"],
    ];

    [Fact]
    public void Lay_WideEnough_AlignsAmountsAndDecimalMarks() =>
        Equal(
            """
            Pot          Rate    Amount
            ---------------------------
            Groceries  19.99   1,200.00
            買い物      5          7.00
            éclairs     0.125      0.50
            ---------------------------
            Total              1,207.50
            """,
            new TextTable(Columns, Rows, [["Total", "", "1,207.50"]]).Lay(80));

    [Fact]
    public void Lay_TooNarrow_CutsTheColumnThatShrinks() =>
        Equal(
            """
            Pot     Rate    Amount
            ----------------------
            Gro…  19.99   1,200.00
            買…    5          7.00
            écl…   0.125      0.50
            """,
            new TextTable(Columns, Rows).Lay(22));

    [Fact]
    public void Lay_FarTooNarrow_CutsNoAmount()
    {
        var table = new TextTable(Columns, Rows);
        Assert.Equal(21, table.NarrowestWidth);
        Assert.Contains("1,200.00", table.Lay(5).Rows[0], StringComparison.Ordinal);
        Assert.Equal(table.Lay(table.NarrowestWidth).All, table.Lay(5).All);
    }

    [Fact]
    public void Lay_TwoThatShrink_CutsTheWiderFirst()
    {
        var table = new TextTable([new("") { Shrinks = true, MinWidth = 3 }, new("") { Shrinks = true, MinWidth = 3 }], [["Eating out", "Fares"]]);
        Assert.Equal(["Eati…  Fares"], table.Lay(12).All);
        Assert.Equal(["Ea…  Fa…"], table.Lay(2).All);
    }

    [Fact]
    public void Lay_StillTooNarrow_LeavesOutColumnsThatMayGo()
    {
        var table = new TextTable(
            [new("Debt"), new("rate") { Drops = 1 }, new("interest") { Drops = 2 }, new("pay")], [["Loan", "6 %", "1.00", "80.00"]]);
        Assert.Equal(["Debt  rate  interest  pay", "---------------------------", "Loan  6 %   1.00      80.00"], table.Lay(30).All);
        Assert.Equal("Loan  6 %   80.00", table.Lay(20).Rows[0]);
        Assert.Equal("Loan  80.00", table.Lay(12).Rows[0]);
        Assert.Equal(11, table.NarrowestWidth);
        Assert.Empty(table.LeftOut(30));
        Assert.Equal(["interest"], table.LeftOut(20));
        Assert.Equal(["rate", "interest"], table.LeftOut(12));
    }

    [Fact]
    public void Lay_WithAColumnThatGrows_TakesTheWholeWidth()
    {
        var table = new TextTable([new("Pot") { Grows = true }, new("Amount", Align.Right)], [["Car", "1.00"]]);
        Assert.Equal(["Pot             Amount", "----------------------", "Car               1.00"], table.Lay(22).All);
    }

    [Fact]
    public void Lay_WithADecimalComma_AlignsOnIt()
    {
        var table = new TextTable([new("", Align.Decimal)], [["1.234,5"], ["7"], ["0,25"]], decimalMark: ",");
        Assert.Equal(["1.234,5", "    7", "    0,25"], table.Lay(80).All);
    }

    [Fact]
    public void Lay_CellsWithControls_AreCleaned() =>
        Assert.Equal(["a?[2Jb c"], new TextTable([new("")], [["a\u001b[2Jb\nc"]]).Lay(80).All);

    [Fact]
    public void Constructor_RowOfAnotherLength_Throws() =>
        Assert.Throws<ArgumentException>(() => new TextTable([new("Pot")], [["a", "b"]]));

    private static void Equal(string expected, TextTableLines actual) =>
        Assert.Equal(expected.Replace("éclairs", "e\u0301clairs", StringComparison.Ordinal).Replace("écl…", "e\u0301cl…", StringComparison.Ordinal)
            .ReplaceLineEndings("\n"), string.Join('\n', actual.All));
}
