using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Lines;
using Payday.Statements.Sums;
using Payday.Statements.Tests.Made;

namespace Payday.Statements.Tests.Sums;

public sealed class RepeatsTests
{
    [Fact]
    public void Of_SameFileTwice_NothingIsNew() => MadeStatements.Any.Sample(statement =>
        Assert.All(Repeats.Of(statement.Lines, statement.Lines, []), repeat => Assert.Equal(RepeatKind.Repeated, repeat.Kind)));

    [Fact]
    public void Of_FilesThatOverlap_OnlyTheRestIsNew() => Gen.Select(MadeStatements.OfLines(1, 25), Gen.Int[0, 100], Gen.Int[0, 100]).Sample((statement, one, other) =>
    {
        int cut = one % statement.Lines.Length;
        int from = other % (cut + 1);

        var repeats = Repeats.Of([.. statement.Lines.Skip(from)], [.. statement.Lines.Take(cut)], []);

        Assert.Equal(statement.Lines.Skip(cut), repeats.Where(repeat => repeat.Kind == RepeatKind.New).Select(repeat => repeat.Line));
    });

    [Fact]
    public void Of_TwinsOfOneDay_BothStay()
    {
        StatementLine twin = Line(5, -250, "Kiosk");

        Assert.Equal([RepeatKind.Repeated, RepeatKind.New], Kinds([twin, twin], [twin]));
        Assert.Equal([RepeatKind.Repeated, RepeatKind.Repeated], Kinds([twin, twin], [twin, twin]));
        Assert.Equal(2, LineKey.Of([twin, twin]).Distinct().Count());
    }

    [Fact]
    public void Of_IdUsedAgainForAnotherAmount_IsNew() =>
        Assert.Equal([RepeatKind.New], Kinds([Line(5, -250, "Kiosk", "1")], [Line(5, -900, "Kiosk", "1")]));

    [Fact]
    public void Of_IdChangedForTheSameLine_IsRepeated() =>
        Assert.Equal([RepeatKind.Repeated], Kinds([Line(5, -250, "Kiosk", "2")], [Line(5, -250, "Kiosk", "1")]));

    [Fact]
    public void Of_DayMovedAndTextCut_SameIdIsRepeated() =>
        Assert.Equal([RepeatKind.Repeated], Kinds([Line(7, -250, "Kio", "1")], [Line(5, -250, "Kiosk at the pier", "1")]));

    [Fact]
    public void Of_SameIdFarAway_IsNew() => Assert.Equal([RepeatKind.New], Kinds([Line(25, -250, "Kiosk", "1")], [Line(5, -250, "Mill", "1")]));

    [Fact]
    public void Of_PendingLineComesBackBooked_IsOneLine()
    {
        StatementLine pending = Line(5, -250, "CARD 1234 RESERVED", "P1");

        LineRepeat repeat = Assert.Single(Repeats.Of([Line(8, -250, "Kiosk at the pier", "B9")], [], [pending]));

        Assert.Equal((RepeatKind.Booked, pending), (repeat.Kind, repeat.Known));
    }

    [Fact]
    public void Of_SameDayAndAmountOtherWords_IsUnsure() =>
        Assert.Equal([RepeatKind.Unsure], Kinds([Line(5, -250, "KIOSK PIER 2")], [Line(5, -250, "Card purchase")]));

    [Fact]
    public void Of_TextsThatDifferInBlanksAndCase_AreRepeated() =>
        Assert.Equal([RepeatKind.Repeated], Kinds([Line(5, -250, "CAFE LUMIERE, PIER 2")], [Line(5, -250, "Caf\u00E9 Lumi\u00E8re Pier 2")]));

    [Fact]
    public void ToString_OfAKey_IsTheStoredForm() =>
        Assert.Equal("2026-03-05|-250|CAFELUMIERE|1", LineKey.Of([Line(5, -250, "Caf\u00E9 Lumi\u00E8re")])[0].ToString());

    private static RepeatKind[] Kinds(StatementLine[] lines, StatementLine[] known) => [.. Repeats.Of(lines, known, []).Select(repeat => repeat.Kind)];

    private static StatementLine Line(int day, long amount, string text, string id = "") =>
        new(new LocalDate(2026, 3, day), Money.FromMinorUnits(amount, MadeStatements.Euro)) { Text = text, BankId = id };
}
