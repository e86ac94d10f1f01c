using Payday.Statements.Faults;
using Payday.Statements.Files;
using Payday.Statements.Lines;
using Payday.Statements.Sums;

namespace Payday.Statements.Tests.Reading.Mt940;

public sealed class Mt940ReaderTests
{
    // An entry of the last days of a year may count from the first of the next, and the other way round.
    [Theory]
    [InlineData("2601021231", "2025-12-31")]
    [InlineData("2512310102", "2026-01-02")]
    [InlineData("2512311231", "2025-12-31")]
    [InlineData("2601020102", "2026-01-02")]
    [InlineData("260102", "2026-01-02")]
    [InlineData("2402280229", "2024-02-29")]
    public void Read_EntryDateWithoutAYear_IsTheNearest(string dates, string day) => Assert.Equal([day], Reads.One(File($"{dates}D1,00NTRFX")).Days());

    [Theory]
    [InlineData("C1,00", "1.00", false)]
    [InlineData("D1,00", "-1.00", false)]
    [InlineData("CR1,00", "1.00", false)]
    [InlineData("DR1,00", "-1.00", false)]
    [InlineData("RC1,00", "-1.00", true)]
    [InlineData("RD1,00", "1.00", true)]
    [InlineData("RCR1,00", "-1.00", true)]
    [InlineData("RDR1,", "1.00", true)]
    [InlineData("D-1,00", "-1.00", false)]
    public void Read_Mark_SaysWhichWay(string written, string amount, bool isReversal)
    {
        StatementLine line = Reads.One(File($"2601020102{written}NTRFX")).Lines[0];

        Assert.Equal((amount, isReversal), (line.Amount.ToPlain(), line.IsReversal));
    }

    [Fact]
    public void Read_ExpectedLines_ArePending()
    {
        Statement statement = Reads.One(File("260102EC5,00NTRFX", "260102D1,00NTRFX"));

        Assert.Equal(["-1.00"], statement.Amounts());
        Assert.Equal("5.00", Assert.Single(statement.Pending).Amount.ToPlain());
    }

    [Theory]
    [InlineData("D-1,00", "10,00", "11,00", "1.00", true)]
    [InlineData("D-1,00", "10,00", "9,00", "-1.00", false)]
    [InlineData("RD1,00", "10,00", "9,00", "-1.00", true)]
    public void Read_MinusOrReversal_IsWhatTheBalancesSay(string written, string opening, string closing, string amount, bool turned)
    {
        StatementFile read = Reads.Text($":20:X\n:25:1\n:28C:1/1\n:60F:C260101EUR{opening}\n:61:260102{written}NTRFX\n:62F:C260131EUR{closing}\n-");

        Assert.Equal([amount], read.Statements[0].Amounts());
        Assert.Equal(turned, read.Faults.Any(fault => fault.Kind == FaultKind.SignsTurned));
        Assert.True(AddingUp.Of(read.Statements[0]).AddsUp);
    }

    [Theory]
    [InlineData("2602300230", "2026-02-28")]
    [InlineData("2611311131", "2026-11-30")]
    public void Read_DayThatIsNone_IsTheMonthsLastAndSaid(string dates, string day)
    {
        StatementFile read = Reads.Text(File($"{dates}D1,00NTRFX"));

        Assert.Equal([day], read.Statements[0].Days());
        Assert.Contains(read.Faults, fault => fault.Kind == FaultKind.NoSuchDay && fault.Wanted == day);
    }

    [Fact]
    public void Read_PagesOfOneStatement_AreJoined()
    {
        StatementFile read = Reads.Text(
            ":20:X\n:25:1\n:28C:5/1\n:60F:C260101EUR10,00\n:61:260102D1,00NTRFX\n:62M:C260102EUR9,00\n-\n:20:X\n:25:1\n:28C:5/2\n:60M:C260102EUR9,00\n:61:260103D2,00NTRFX\n:62F:C260103EUR7,00\n-");

        Statement statement = Assert.Single(read.Statements);
        Assert.Equal(["-1.00", "-2.00"], statement.Amounts());
        Assert.Equal(("10.00", "7.00", true), (statement.Opening!.Amount.ToPlain(), statement.Closing!.Amount.ToPlain(), AddingUp.Of(statement).AddsUp));
    }

    [Theory]
    [InlineData("166?00TRANSFER?10599?20EREF+R-1?21MREF+M-7?22CRED+C-9?23SVWZ+Rent for M?24ay?30BANK?31ACC1?32Hillside?33 Homes", "TRANSFER Rent for May", "Hillside Homes", "M-7", "R-1")]
    [InlineData("/EREF/R-1/MARF/M-7/CSID/C-9/BENM//NAME/Hillside Homes/REMI/Rent for May/ISDT/2026-01-02", "Rent for May", "Hillside Homes", "M-7", "R-1")]
    [InlineData("Rent for\nMay", "Rent for May", "", "", "")]
    public void Read_Text_InEachOfItsBuilds(string written, string text, string party, string mandate, string reference)
    {
        StatementLine line = Reads.One($":20:X\n:25:1\n:60F:C260101EUR0,\n:61:260102D1,00NTRFNONREF\n:86:{written}\n:62F:D260102EUR1,00\n-").Lines[0];

        Assert.Equal((text, party, mandate, reference), (line.Text, line.Party, line.Mandate, line.Reference));
    }

    [Fact]
    public void Read_TextLineThatBeginsWithAColon_IsText() =>
        Assert.Equal("Rent :and more: May", Reads.One(":20:X\n:60F:C260101EUR0,\n:61:260102D1,00NTRFX\n:86:Rent\n:and more: May\n:62F:D260102EUR1,00\n").Lines[0].Text);

    [Fact]
    public void Read_LineThatIsNone_IsNamedAndLeftOut()
    {
        StatementFile read = Reads.Text(File("no line at all", "260102D1,00NTRFX", "260102D,NTRFX"));

        Assert.Equal(["-1.00"], read.Statements[0].Amounts());
        Assert.Equal([(FaultKind.BrokenLine, 5), (FaultKind.NotAnAmount, 7)], read.Faults.Select(fault => (fault.Kind, fault.Line)));
        Assert.Equal(2, read.Statements[0].LinesLeftOut);
    }

    [Fact]
    public void Read_NoBalances_CantBeKnown()
    {
        StatementFile read = Reads.Text(":20:X\n:25:1\n:61:260102D1,00NTRFX\n");

        Assert.Equal(FaultKind.CurrencyMissing, Assert.Single(read.Faults).Kind);
        Assert.Empty(read.Statements);
    }

    private static string File(params string[] lines) =>
        $":20:X\n:25:1\n:28C:1/1\n:60F:C251231EUR10,00\n{string.Concat(lines.Select(line => $":61:{line}\n"))}:64:C260131EUR0,\n-\n";
}
