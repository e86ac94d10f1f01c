using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.DuePayments;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.DuePayments.RentAndCard;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.DuePayments;

/// <summary>What the lists of dues say: what is to be paid with what is there for it, and what was paid. Rule: the project's design, section 5.9.</summary>
public class DueLinesTests
{
    // 190 are held: 150 of it are March's, and 40 are there for April's.
    [Fact]
    public void Of_WhatIsHeld_GoesToTheEarliestDueFirst()
    {
        Book book = Moving.Enter(March, new MoveEntry(Friday6March, MoveEnds.Buffer, DueLines.Holding(Rent.Owner), Usd(40), "")).Value!;

        Assert.Equal(
            [(Usd(150), Usd(150)), (Usd(150), Usd(40)), (Usd(150), Usd(0))],
            DueLines.Of(book, new(2026, 5, 15)).Where(line => line.Key.Bill is not null).Select(line => (line.Rest, line.Has)));
        Assert.Equal([Rent, Card], DueLines.Of(book, Rent.Scheduled).Select(line => line.Key));
        Assert.Empty(DueLines.Of(book, Rent.Scheduled.PlusDays(-1)));
    }

    // What a payday wrote as paid is in the list from that payday on.
    [Fact]
    public void Paid_ByAPayday_IsOfThatPayday()
    {
        Book next = Close(March, Second);

        Assert.Equal(
            [new PaidDue(Rent, "Rent", Rent.Scheduled, Second, Usd(150), null), new PaidDue(Card, "Card", Card.Scheduled, Second, Usd(25), null)],
            DueLines.Paid(next, Second));
        Assert.Empty(DueLines.Paid(next, Second.PlusDays(1)));
        Assert.Empty(DueLines.Paid(March, Friday6March));
    }

    [Fact]
    public void Paid_ByThePerson_IsOfItsOwnDayAndTheLastFirst()
    {
        Book parts = Pay(Pay(March, new DueEntry(Rent, Friday13March, Usd(50))), new DueEntry(Rent, Friday13March, Usd(40)));
        Book all = Pay(Pay(parts, new DueEntry(Card, new(2026, 3, 14))), new DueEntry(Rent, new(2026, 3, 12)));

        Assert.Equal(
            [(Card, 14, Usd(25), 3L), (Rent, 13, Usd(40), 2L), (Rent, 13, Usd(50), 1L), (Rent, 12, Usd(60), 4L)],
            DueLines.Paid(all, Friday6March).Select(paid => (paid.Key, paid.PaidOn.Day, paid.Amount, paid.Number!.Value)));
        Assert.Equal([3, 2, 1], DueLines.Paid(all, Friday13March).Select(paid => paid.Number!.Value));
        Assert.Equal([2, 1], DueLines.Paid(parts, Friday13March).Select(paid => paid.Number!.Value));
        Assert.Equal([1], DueLines.Paid(Paying.Undo(parts, 2, Second).Value!, Friday13March).Select(paid => paid.Number!.Value));
    }

    // Whether the rest is freed, and whether anything of it was paid: each payment of the rent in its order, then a card's that has nothing to do with it.
    [Theory]
    [InlineData("150", "paid")]
    [InlineData("100", "part")]
    [InlineData("100 freed", "part freed")]
    [InlineData("0 freed", "freed")]
    [InlineData("50, 0 freed", "part", "part freed")]
    [InlineData("50, 100", "part", "paid")]
    public void Paid_InPartOrFreed_IsSaid(string payments, params string[] said)
    {
        Book waived = Pay(
            payments.Split(", ").Aggregate(March, (book, payment) => Pay(
                book, new DueEntry(Rent, Friday13March, Usd(decimal.Parse(payment.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture)), payment.EndsWith("freed", StringComparison.Ordinal)))),
            new DueEntry(Card, Friday13March, Usd(0), FreesRest: true));
        PaidDue[] paid = [.. DueLines.Paid(waived, Friday6March).Reverse()];

        Assert.Equal(said.Select(word => (word.Contains("freed", StringComparison.Ordinal), word != "freed")), paid[..^1].Select(one => (one.IsFreed, one.IsPaidInPart)));
        Assert.Equal((true, false), (paid[^1].IsFreed, paid[^1].IsPaidInPart));
    }
}
