using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Statements.Lines;
using Payday.Statements.Matching;
using Payday.Statements.Tests.Made;

namespace Payday.Statements.Tests.Matching;

public sealed class LineMatcherTests
{
    [Theory]
    [InlineData(0, true)]
    [InlineData(-3, true)]
    [InlineData(5, true)]
    [InlineData(-4, false)]
    [InlineData(6, false)]
    public void Match_ExactAmountInTheWindow_IsOne(int days, bool isOne)
    {
        // A Tuesday, so that no weekend widens the window.
        MatchResult result = Match([Line(10 + days, -1250, "Kiosk")], [Entry(1, 10, -1250, "Kiosk")]);

        Assert.Equal(isOne ? 1 : 0, result.Matched.Length);
        Assert.Equal(isOne ? 0 : 1, result.Leftovers.Length);
        Assert.Equal(isOne ? 0 : 1, result.Open.Length);
    }

    [Fact]
    public void Match_TwinsOfOneDay_ArePairedInOrder()
    {
        MatchResult result = Match(
            [Line(10, -250, "Kiosk"), Line(10, -250, "Kiosk"), Line(11, -250, "Kiosk")],
            [Entry(3, 11, -250, "Kiosk"), Entry(1, 10, -250, "Kiosk"), Entry(2, 10, -250, "Kiosk")]);

        Assert.Equal([1, 2, 3], result.Matched.Select(match => match.Entry.Number).Order());
        Assert.Equal(3, result.Matched[2].Entry.Number);
    }

    [Fact]
    public void Match_TwoTwinLinesForOneEntry_OneIsTakenAndOneIsLeft()
    {
        MatchResult result = Match([Line(10, -250, "Kiosk"), Line(10, -250, "Kiosk")], [Entry(1, 10, -250, "Kiosk")]);

        Assert.Single(result.Matched);
        Assert.Single(result.Leftovers);
    }

    [Fact]
    public void Match_TwoDifferentEntriesOfOneAmount_SaysNothingWithoutWords()
    {
        MatchResult result = Match([Line(11, -2000, "")], [Entry(1, 10, -2000, "Gift"), Entry(2, 10, -2000, "Fuel")]);

        Assert.Empty(result.Matched);
        Assert.Equal([1, 2], Assert.Single(result.Unclear).Candidates.Select(entry => entry.Number));
        Assert.Empty(result.Open);
    }

    // Each trip to a machine is a line of its own, of one amount each time, and has no name here: a bank's word for cash makes it sure, where it gives no kind.
    [Theory]
    [InlineData("Cash machine 4", 3)]
    [InlineData("GELDAUTOMAT 0815", 3)]
    [InlineData("Zorblatt 4", 0)]
    public void Match_WithdrawalsOfACommonAmount_AreSureByTheBanksWord(string text, int matched)
    {
        MatchResult result = Match(
            [Line(2, -8000, text), Line(14, -8000, text), Line(28, -8000, text)],
            [Entry(1, 2, -8000, "", AccountLineKind.Withdrawal), Entry(2, 14, -8000, "", AccountLineKind.Withdrawal), Entry(3, 28, -8000, "", AccountLineKind.Withdrawal)]);

        Assert.Equal(matched, result.Matched.Length);
        Assert.Equal(3 - matched, result.Unclear.Length);
    }

    [Fact]
    public void Match_TwoDifferentEntriesOfOneAmount_WordsDecide()
    {
        MatchResult result = Match([Line(11, -2000, "HARBOUR FUEL 1234"), Line(11, -2000, "ANY SHOP")], [Entry(1, 10, -2000, "Gift"), Entry(2, 10, -2000, "Harbour Fuel")]);

        Assert.Equal(2, result.Matched.Single(match => match.Line.Text.StartsWith("HARBOUR", StringComparison.Ordinal)).Entry.Number);
    }

    [Fact]
    public void Match_BillThatVaries_NeedsItsNameOrMandate()
    {
        AccountLine bill = Entry(1, 10, -5000, "Hillside Water", AccountLineKind.Bill) with { Tolerance = 1000, Mandate = "M-7" };

        Assert.Single(Match([Line(10, -5480, "HILLSIDE WATER MAY")], [bill]).Matched);
        Assert.Single(Match([Line(10, -5480, "DD 123") with { Mandate = "M-7" }], [bill]).Matched);
        Assert.Empty(Match([Line(10, -5480, "Corner Grocer")], [bill]).Matched);
        Assert.Empty(Match([Line(10, -6480, "HILLSIDE WATER MAY")], [bill]).Matched);
    }

    [Fact]
    public void Match_ChequeByItsNumber_MonthsLater()
    {
        AccountLine cheque = Entry(1, 1, -9000, "Roof", AccountLineKind.Cheque) with { ChequeNumber = "001000", Date = new LocalDate(2025, 12, 1) };

        Assert.Single(Match([Line(10, -9000, "") with { ChequeNumber = "1000", Kind = LineKind.Cheque }], [cheque]).Matched);
        Assert.True(Assert.Single(Match([], [cheque]).Open).IsOnItsWay);
    }

    [Fact]
    public void Match_DepositOfSeveralReturns_IsProposedAsTheirSum()
    {
        MatchResult result = Match(
            [Line(10, 7500, "Deposit")],
            [Entry(1, 8, 2500, "Return", AccountLineKind.Deposit), Entry(2, 9, 5000, "Return", AccountLineKind.Deposit), Entry(3, 9, 900, "Return", AccountLineKind.Deposit)]);

        Assert.Equal([1, 2], Assert.Single(result.Sums).Entries.Select(entry => entry.Number));
        Assert.Equal(3, Assert.Single(result.Open).Entry.Number);
    }

    [Fact]
    public void Match_TwoWaysToTheSum_ProposesNeither()
    {
        MatchResult result = Match(
            [Line(10, 7500, "Deposit")],
            [Entry(1, 8, 2500, "a", AccountLineKind.Deposit), Entry(2, 9, 5000, "b", AccountLineKind.Deposit), Entry(3, 9, 3500, "c", AccountLineKind.Deposit), Entry(4, 9, 4000, "d", AccountLineKind.Deposit)]);

        Assert.Empty(result.Sums);
        Assert.Single(result.Leftovers);
    }

    [Fact]
    public void Match_TwoWaysInOneKindAndOneInAnother_ProposesNone()
    {
        MatchResult result = Match(
            [Line(10, -7500, "x")],
            [
                Entry(1, 8, -2500, "a"), Entry(2, 9, -5000, "b"), Entry(3, 9, -3500, "c"), Entry(4, 9, -4000, "d"),
                Entry(5, 9, -1500, "e", AccountLineKind.Withdrawal), Entry(6, 9, -6000, "f", AccountLineKind.Withdrawal),
            ]);

        Assert.Empty(result.Sums);
    }

    [Theory]
    [InlineData(-300, "Account fee", LineKind.Other, LeftoverKind.Fee)]
    [InlineData(-300, "x", LineKind.Fee, LeftoverKind.Fee)]
    [InlineData(12, "INTEREST 2026", LineKind.Other, LeftoverKind.Interest)]
    [InlineData(1500, "Refund of order 7", LineKind.Other, LeftoverKind.Refund)]
    [InlineData(-4000, "Farnet", LineKind.DirectDebit, LeftoverKind.StandingPayment)]
    [InlineData(-4000, "Corner Grocer", LineKind.Card, LeftoverKind.Unknown)]
    public void Match_NoPartner_IsNamed(long amount, string text, LineKind kind, LeftoverKind named) =>
        Assert.Equal(named, Assert.Single(Match([Line(10, amount, text) with { Kind = kind }], []).Leftovers).Kind);

    [Fact]
    public void Match_MoneyBackFromAShop_IsARefund()
    {
        MatchResult result = Match([Line(3, -4000, "") with { Party = "Box Books" }, Line(10, 1500, "") with { Party = "BOX BOOKS" }], []);

        Assert.Equal([LeftoverKind.Unknown, LeftoverKind.Refund], result.Leftovers.Select(leftover => leftover.Kind));
    }

    [Theory]
    [InlineData(31, true)]
    [InlineData(26, true)]
    [InlineData(20, false)]
    public void Match_EntryTheBankDoesntShow_IsOnItsWayWhileNew(int day, bool isOnItsWay) =>
        Assert.Equal((31 - day, isOnItsWay), (Match([], [Entry(1, day, -100, "x")]).Open[0].Age, Match([], [Entry(1, day, -100, "x")]).Open[0].IsOnItsWay));

    [Fact]
    public void Match_AnyAccount_UsesEachLineAndEntryOnce() => Gen.Select(Gen.Int[0, 100_000], Gen.Int[1, 80]).Sample((seed, count) =>
    {
        (List<StatementLine> lines, List<AccountLine> entries, _) = MadeAccounts.Make(seed, count);

        MatchResult result = Match(lines, entries);

        Assert.Equal(lines.Count, result.Matched.Length + result.Unclear.Length + result.Sums.Length + result.Leftovers.Length);
        int[] used = [.. result.Matched.Select(match => match.Entry.Number), .. result.Sums.SelectMany(sum => sum.Entries.Select(entry => entry.Number)), .. result.Open.Select(open => open.Entry.Number)];
        Assert.Equal(used.Length, used.Distinct().Count());
    });

    // Precision first. What is taken wrongly is a line that nobody entered, for an entry of the same shop and amount that the bank lacks.
    [Fact]
    public void Match_MadeAccounts_TakesHardlyAWrongOneAndMostOfTheRightOnes()
    {
        int taken = 0;
        int right = 0;
        int all = 0;
        for (int seed = 1; seed <= 200; seed++)
        {
            (List<StatementLine> lines, List<AccountLine> entries, Dictionary<StatementLine, AccountLine> truth) = MadeAccounts.Make(seed, 60);
            MatchResult result = Match(lines, entries);
            all += truth.Count;
            taken += result.Matched.Length;
            right += result.Matched.Count(match => truth.TryGetValue(match.Line, out AccountLine? entry)
                && (entry.Number == match.Entry.Number || (entry.MinorUnits == match.Entry.MinorUnits && entry.Text == match.Entry.Text)));
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{all} lines, {taken} taken, {right} right");
        Assert.True(right * 1000L >= taken * 998L, $"precision {right} of {taken}");
        Assert.True(right * 100L >= all * 97L, $"recall {right} of {all}");
    }

    private static MatchResult Match(IReadOnlyList<StatementLine> lines, IReadOnlyList<AccountLine> entries) => LineMatcher.Match(lines, entries, new LocalDate(2026, 3, 31));

    private static StatementLine Line(int day, long amount, string text) => new(new LocalDate(2026, 3, day), Money.FromMinorUnits(amount, MadeStatements.Euro)) { Text = text };

    private static AccountLine Entry(int number, int day, long amount, string text, AccountLineKind kind = AccountLineKind.CardPurchase) =>
        new(number, new LocalDate(2026, 3, day), amount, text, kind);
}
