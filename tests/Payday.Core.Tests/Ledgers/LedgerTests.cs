using CsCheck;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Tests.Faults;
using static Payday.Core.Tests.Amounts.Amount;

namespace Payday.Core.Tests.Ledgers;

public class LedgerTests
{
    private static readonly LocalDate Day = new(2026, 3, 6);

    private static readonly LedgerEnd[] Ends =
    [
        LedgerEnd.InAccount(Purpose.LeftToPlace), LedgerEnd.InAccount(Purpose.Buffer), LedgerEnd.InAccount(Purpose.SetAside(new BillId("rent"))),
        LedgerEnd.InAccount(Purpose.Pot(new PotId("gifts"))), LedgerEnd.InAccount(Purpose.KeptBack(new PotId("food"))), LedgerEnd.InCash(Purpose.Pot(new PotId("food"))),
        LedgerEnd.InCash(Purpose.OwedBack(new PotId("food"))), LedgerEnd.InCash(Purpose.Buffer), new LedgerEnd.Owed(new DebtId("card")),
        LedgerEnd.Opening, LedgerEnd.PaidBy(new SourceId("wage")),
        LedgerEnd.PaidFor(new BillId("rent")), LedgerEnd.InterestOn(new DebtId("card")),
        LedgerEnd.SpentFrom(new PotId("food")),
    ];

    private static readonly Gen<Movement> AnyMovement =
        Gen.Select(Gen.Int[0, Ends.Length - 1], Gen.Int[1, Ends.Length - 1], Gen.Long[1, 1_000_000]).Select((from, step, cents) =>
            new Movement(0, Day, Ends[from], Ends[(from + step) % Ends.Length], Cents(cents), "test"));

    // Enough in every end that any movements can be taken from it.
    private static readonly Ledger Rich = Ledger.Empty(Dollars).Add(
        Ends.OfType<LedgerEnd.At>().Select(end => new Movement(0, Day, Ends[9], end, Usd(1_000_000), "opening")));

    [Fact]
    public void FromKey_EveryEnd_ReadsBack() => Assert.All(Ends, end => Assert.Equal(end, LedgerEnd.FromKey(end.Key)));

    // As stores and files have them for good.
    [Fact]
    public void Key_OfEachEnd_IsAsItWasStored()
    {
        PotId food = new("food");
        DebtId card = new("card");
        Assert.Equal(
            [
                "account/left-to-place", "account/buffer", "account/set-aside:rent", "account/pot:food", "account/kept-back:food", "account/owed-back:food",
                "cash/wallet:food", "cash/pot:food", "account/for-debt:card", "account/overdraft", "account/for-card:card", "owed/card", "outside/opening",
                "outside/source:wage", "outside/bill:rent", "outside/interest:card", "outside/spending:food", "outside/spending", "outside/difference:food",
            ],
            new LedgerEnd[]
            {
                LedgerEnd.InAccount(Purpose.LeftToPlace), LedgerEnd.InAccount(Purpose.Buffer), LedgerEnd.InAccount(Purpose.SetAside(new BillId("rent"))),
                LedgerEnd.InAccount(Purpose.Pot(food)), LedgerEnd.InAccount(Purpose.KeptBack(food)), LedgerEnd.InAccount(Purpose.OwedBack(food)),
                LedgerEnd.InCash(Purpose.Wallet(food)), LedgerEnd.InCash(Purpose.Pot(food)), LedgerEnd.InAccount(Purpose.ForDebt(card)),
                LedgerEnd.InAccount(Purpose.Overdraft), LedgerEnd.InAccount(Purpose.ForCard(card)), new LedgerEnd.Owed(card), LedgerEnd.Opening,
                LedgerEnd.PaidBy(new SourceId("wage")), LedgerEnd.PaidFor(new BillId("rent")), LedgerEnd.InterestOn(card), LedgerEnd.SpentFrom(food), LedgerEnd.SpentFrom(null), LedgerEnd.MissedIn(food),
            }.Select(end => end.Key));
    }

    [Theory]
    [InlineData("fee", EntryKind.Fee)]
    [InlineData("interest", EntryKind.Interest)]
    [InlineData("gift", EntryKind.Gift)]
    [InlineData("transfer", EntryKind.Transfer)]
    [InlineData("payment", EntryKind.Payment)]
    [InlineData("income", EntryKind.Income)]
    [InlineData("borrowing", EntryKind.Borrowing)]
    [InlineData("refund", EntryKind.Refund)]
    [InlineData("loss", EntryKind.Loss)]
    public void Key_OfAnEntry_NamesItsKind(string word, EntryKind kind)
    {
        var end = (LedgerEnd.Outside)LedgerEnd.FromKey("outside/entry:" + word);

        Assert.Equal((kind, "outside/entry:" + word), (end.Entry, end.Key));
        Assert.Null(((LedgerEnd.Outside)LedgerEnd.FromKey("outside/spending:" + word)).Entry);
    }

    [Theory]
    [InlineData("")]
    [InlineData("account")]
    [InlineData("account/pott:food")]
    [InlineData("pocket/pot:food")]
    public void FromKey_NoEnd_Throws(string key) => Assert.Throws<FormatException>(() => LedgerEnd.FromKey(key));

    [Fact]
    public void Add_AnyMovements_PurposesAddUpToPlacesAndAllEndsToZero() =>
        AnyMovement.List[0, 30].Sample(movements =>
        {
            Ledger ledger = Rich.Add(movements);
            foreach (Place place in new[] { Place.Account, Place.Cash })
            {
                Assert.Equal(ledger.Balances.In(place), Money.Sum(ledger.Balances.PurposesIn(place).Select(purpose => purpose.Amount), Dollars));
            }

            Assert.Equal(Usd(0), Money.Sum(ledger.Balances.All.Select(pair => pair.Value), Dollars));
        });

    [Fact]
    public void All_OfAnyMovements_AreInTheOrderOfTheirKeys() =>
        AnyMovement.List[0, 30].Sample(movements =>
        {
            string[] keys = [.. Rich.Add(movements).Balances.All.Select(held => held.Key.Key)];
            Assert.Equal(keys.Order(StringComparer.Ordinal), keys);
        });

    // Another ledger made of the one before leaves that as it was.
    [Fact]
    public void Add_Further_ChangesNothingOfTheLedgerBefore() =>
        Gen.Select(AnyMovement.List[1, 10], AnyMovement.List[1, 10]).Sample((first, then) =>
        {
            Ledger before = Rich.Add(first);
            KeyValuePair<LedgerEnd, Money>[] held = [.. before.Balances.All];
            int[] written = Written();
            _ = before.Add(then);
            _ = before.Add(before.Reverse(before.Movements.Select(movement => movement.Number), Day, "undone").Value);

            Assert.Equal(held, before.Balances.All);
            Assert.Equal(written, Written());

            int[] Written() => [.. Ends.Select(end => before.Of(end).Count)];
        });

    [Fact]
    public void Reverse_EveryMovement_BringsAllBackToZero() =>
        AnyMovement.List[1, 20].Sample(movements =>
        {
            Ledger ledger = Rich.Add(movements);
            Ledger undone = ledger.Add(ledger.Reverse(ledger.Movements.Select(movement => movement.Number), Day, "undone").Value);
            Assert.Empty(undone.Balances.All);
            Assert.Equal(2 * (Rich.Movements.Count + movements.Count), undone.Movements.Count);
        });

    [Fact]
    public void Reverse_Twice_IsRefused()
    {
        Ledger ledger = Ledger.Empty(Dollars).Add([new Movement(0, Day, Ends[10], Ends[0], Usd(5), "income")]);
        Ledger undone = ledger.Add(ledger.Reverse([1], Day, "typed wrong").Value);

        Assert.Equal("Ledger line 1 is undone already.", undone.Reverse([1], Day, "again").Fault.Said());
        Assert.Equal("Ledger line 2 itself undoes another; enter what it undid again instead.", undone.Reverse([2], Day, "again").Fault.Said());
        Assert.Equal("There is no ledger line 3.", undone.Reverse([3], Day, "again").Fault.Said());
    }

    [Fact]
    public void Of_MovementsOfALedger_IsThatLedger() =>
        AnyMovement.List[0, 30].Sample(movements =>
        {
            Ledger added = Rich.Add(movements);
            Ledger read = Ledger.Of(Dollars, [.. added.Movements]);

            Assert.Equal(added.Movements, read.Movements);
            Assert.Equal(added.Balances.All.ToHashSet(), read.Balances.All.ToHashSet());
            Assert.Equal(added.Balances.In(Place.Cash), read.Balances.In(Place.Cash));
            Assert.Equal(added.Balances.In(Place.Account), read.Balances.In(Place.Account));
        });

    /// <summary>Some of them in columns, the rest since, some undone in either: every figure is that of the movements one by one.</summary>
    [Fact]
    public void Of_Columns_IsTheLedgerOfTheirMovements() =>
        Gen.Select(AnyMovement.List[0, 30], Gen.Int[0, 1_000], Gen.Int[1, 9].Array[0, 4], Gen.Int[0, 1_000], AnyMovement.List[0, 5]).Sample((movements, some, undone, more, since) =>
        {
            Ledger added = Rich.Add(movements.Select((movement, i) => movement with { Payday = i % 3 == 0 ? null : Day.PlusDays(i / 4) }));
            foreach (int number in undone.Distinct().Where(number => number <= movements.Count))
            {
                added = added.Add(added.Reverse([Rich.Movements.Count + number], Day, "undone").Value);
            }

            int packed = some % (added.Movements.Count + 1);
            Ledger stored = Ledger.Of(Columns(added.Movements.Take(packed)), [.. added.Movements.Skip(packed)]);
            AssertSame(added, stored);

            // Whether or not its ends were asked for before it grows.
            Ledger unasked = Ledger.Of(Columns(added.Movements.Take(packed)), [.. added.Movements.Skip(packed)]);
            Movement[] further =
            [
                .. since.Where(movement => added.Balances[movement.From] - movement.Amount is { IsNegative: false } || LedgerCheck.MayBeNegative(movement.From)).Take(1),
                .. added.Standing.Skip(more % Math.Max(1, added.Standing.Count())).Take(1).SelectMany(movement => added.Reverse([movement.Number], Day, "undone").Value),
            ];
            Ledger grown = Ledger.Of(Dollars, [.. added.Movements, .. further.Select((movement, i) => movement with { Number = added.Movements.Count + i + 1 })]);
            if (LedgerCheck.Faults(grown.Balances).Any())
            {
                return;
            }

            AssertSame(grown, stored.Add(further));
            AssertSame(grown, unasked.Add(further));
            AssertSame(added, stored);
        });

    [Theory]
    [InlineData(0, 0, 1)]
    [InlineData(-1, 0, 1)]
    [InlineData(5, 1, 1)]
    public void Columns_OfWhatMovesNothing_Throw(long amount, int from, int to)
    {
        MovementColumns columns = Columns([]);
        columns.NumberOf(Ends[0]);
        columns.NumberOf(Ends[1]);

        Assert.Throws<ArgumentException>(() => columns.Add(Day, (from, to), amount, 0, null, null));
    }

    private static MovementColumns Columns(IEnumerable<Movement> movements)
    {
        Movement[] all = [.. movements];
        var columns = new MovementColumns(Dollars, all.Length, [.. all.Select(movement => movement.Reason)]);
        foreach (Movement movement in all)
        {
            columns.Add(
                movement.Date,
                (columns.NumberOf(LedgerEnd.FromKey(movement.From.Key)), columns.NumberOf(LedgerEnd.FromKey(movement.To.Key))),
                movement.Amount.MinorUnits,
                columns.Count,
                movement.Payday,
                movement.Reverses);
        }

        return columns;
    }

    private static void AssertSame(Ledger wanted, Ledger ledger)
    {
        Assert.Equal(wanted.Balances.All.ToHashSet(), ledger.Balances.All.ToHashSet());
        Assert.Equal(wanted.Balances.In(Place.Cash), ledger.Balances.In(Place.Cash));
        Assert.Equal(wanted.Balances.In(Place.Account), ledger.Balances.In(Place.Account));
        Assert.All(Ends, end =>
        {
            Assert.Equal(wanted.Of(end), ledger.Of(end));
            Assert.Equal(wanted.Of(end).Select(movement => (movement.Date, movement.To == end ? movement.Amount : -movement.Amount)), ledger.ChangesOf(end));
            Assert.All(Enumerable.Range(-2, 5), day => Assert.Equal(
                (wanted.CourseOf(end).On(Day.PlusDays(day)), wanted.CourseOf(end).LeastFrom(Day.PlusDays(day))),
                (ledger.CourseOf(end).On(Day.PlusDays(day)), ledger.CourseOf(end).LeastFrom(Day.PlusDays(day)))));
        });
        Assert.Equal(wanted.Standing, ledger.Standing);
        Assert.All(wanted.Movements, movement => Assert.Equal(wanted.UndoneBy(movement.Number), ledger.UndoneBy(movement.Number)));
        Assert.Equal(wanted.Movements, ledger.Movements);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2)]
    public void Of_AnotherNumber_Throws(int number) =>
        Assert.Throws<ArgumentException>(() => Ledger.Of(Dollars, [new Movement(number, Day, Ends[0], Ends[1], Usd(1), "test")]));

    // As one that is read: with more movements of an end than are gathered at a time, ends that are equal and not the same object, and some undone.
    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void Of_AnEndOfALongLedger_HasAllThatStandInOrder(int undone)
    {
        List<Movement> movements = [.. Enumerable.Range(1, 3_000).Select(number => new Movement(
            number, Day, LedgerEnd.FromKey(LedgerEnd.Opening.Key), LedgerEnd.FromKey(Ends[number % 3].Key), Cents(number), "test"))];
        movements.AddRange(Enumerable.Range(1, undone).Select(number => movements[number * 700] with
        {
            Number = 3_000 + number,
            From = movements[number * 700].To,
            To = movements[number * 700].From,
            Reverses = movements[number * 700].Number,
        }));
        var ledger = Ledger.Of(Dollars, movements.ToArray());
        HashSet<long> gone = [.. Enumerable.Range(1, undone).SelectMany(number => new[] { (number * 700) + 1L, 3_000 + number })];

        Assert.All(Ends, end => Assert.Equal(
            movements.Where(movement => (movement.From == end || movement.To == end) && !gone.Contains(movement.Number)),
            ledger.Of(end)));
        Assert.Equal(movements.Where(movement => !gone.Contains(movement.Number)), ledger.Standing);
        Assert.All(movements, movement => Assert.Equal(!gone.Contains(movement.Number), ledger.Stands(movement)));
    }

    [Fact]
    public void Add_NothingMoved_Throws()
    {
        Ledger ledger = Ledger.Empty(Dollars);

        Assert.Throws<ArgumentException>(() => ledger.Add([new Movement(0, Day, Ends[0], Ends[1], Usd(0), "test")]));
        Assert.Throws<ArgumentException>(() => ledger.Add([new Movement(0, Day, Ends[0], Ends[0], Usd(1), "test")]));
        Assert.Throws<InvalidOperationException>(() => ledger.Add([new Movement(0, Day, Ends[0], Ends[1], Of(1, "EUR"), "test")]));
    }

    [Fact]
    public void Faults_CashBelowZero_IsNamed()
    {
        Ledger ledger = Ledger.Of(Dollars, [new Movement(1, Day, Ends[5], Ends[13], Usd(5), "spent")]);

        Assert.Equal(["cash/pot:food is -5.00: cash can't be below zero."], LedgerCheck.Faults(ledger.Balances).Select(fault => fault.Said()));
    }

    [Fact]
    public void Faults_APurposeInTheAccountBelowZero_IsNamedButForWhatIsOwedBack()
    {
        Ledger ledger = Ledger.Of(
            Dollars,
            [
                new Movement(1, Day, Ends[2], Ends[11], Usd(300), "rent"),
                new Movement(2, Day, LedgerEnd.InAccount(Purpose.OwedBack(new PotId("food"))), Ends[13], Usd(12), "by card"),
                new Movement(3, Day, Ends[0], Ends[10], Usd(4), "income undone"),
            ]);

        Assert.Equal(["account/set-aside:rent is -300.00: more has left it than was there."], LedgerCheck.Faults(ledger.Balances).Select(fault => fault.Said()));
    }

    /// <summary>Whatever is added, in one go or bit by bit: no purpose goes below zero but what may, and one that is there already only comes back up.</summary>
    [Fact]
    public void Add_AnyMovements_NeverTakesFromWhereNothingIs() =>
        AnyMovement.List[1, 6].List[1, 8].Sample(lists =>
        {
            Ledger ledger = Ledger.Of(Dollars, [new Movement(1, Day, Ends[2], Ends[11], Usd(3000), "from an earlier version")]);
            foreach (List<Movement> movements in lists)
            {
                Balances before = ledger.Balances;
                Balances wanted = before.After([.. movements]);
                bool takes = wanted.All.Any(pair => pair.Key is LedgerEnd.At held
                    && !(held.Place == Place.Account && held.Purpose.Kind is PurposeKind.OwedBack or PurposeKind.LeftToPlace)
                    && pair.Value.IsNegative && pair.Value < before[pair.Key]);
                if (takes)
                {
                    Assert.Throws<InvalidOperationException>(() => ledger.Add(movements));
                }
                else
                {
                    ledger = ledger.Add(movements);
                }
            }
        });

    [Fact]
    public void OfYear_Movements_AreSummedByMonth()
    {
        Ledger ledger = Ledger.Empty(Dollars).Add(
        [
            new Movement(0, new(2025, 12, 1), Ends[9], Ends[2], Usd(100), "opening"),
            new Movement(0, new(2025, 12, 1), new LedgerEnd.Owed(new DebtId("card")), Ends[9], Usd(500), "opening"),
            new Movement(0, new(2026, 1, 9), Ends[10], Ends[0], Usd(900), "income"),
            new Movement(0, new(2026, 1, 9), Ends[0], new LedgerEnd.Owed(new DebtId("card")), Usd(40), "payment"),
            new Movement(0, new(2026, 1, 9), new LedgerEnd.Owed(new DebtId("card")), Ends[12], Usd(7), "interest"),
            new Movement(0, new(2026, 2, 6), Ends[0], Ends[5], Usd(60), "fill"),
            new Movement(0, new(2026, 2, 6), Ends[2], Ends[11], Usd(100), "rent"),
            new Movement(0, new(2027, 1, 6), Ends[0], new LedgerEnd.Owed(new DebtId("card")), Usd(99), "payment"),
        ]);

        MonthSummary[] months = [.. MonthSummary.OfYear(ledger, 2026)];

        Assert.Equal((Usd(900), Usd(40), Usd(7), Usd(467)), (months[0].CameIn, months[0].DebtPayments, months[0].Interest, months[0].Owed));
        Assert.Equal((Usd(60), Usd(100), Usd(467)), (months[1].Fills, months[1].Bills, months[1].Owed));
        Assert.Equal(Usd(467), months[11].Owed);
    }
}
