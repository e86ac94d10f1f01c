using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Books;

public class WeekWriterTests
{
    private static readonly LedgerEnd Buffer = LedgerEnd.InAccount(Purpose.Buffer);
    private static readonly LedgerEnd Outside = LedgerEnd.Entered(EntryKind.Interest);

    // Whoever writes asks for numbers before the book has the movements, and what lies between them is recorded.
    [Fact]
    public void NextAndLast_OfMovementsThatWait_AreThoseThatTheBookHasThen()
    {
        var writer = new WeekWriter(Closed);
        long first = writer.Next;
        long? one = writer.Move(Friday13March, Outside, Buffer, Usd(5), "in");
        writer.Add([new Movement(0, Friday13March, Outside, Buffer, Usd(7), "added")]);
        long? none = writer.Move(Friday13March, Outside, Buffer, Usd(0), "nothing");
        writer.Record(weeks => weeks with { Draft = new CountDraft(Friday13March) });

        Assert.Equal((Closed.Ledger.Movements.Count + 1L, first, null, first + 1), (first, one, none, writer.Last));
        Assert.Equal(Usd(12), writer[Buffer] - Closed.Ledger.Balances[Buffer]);
        Assert.Equal([(first, "in"), (first + 1, "added")], writer.Book.Ledger.Since(Closed.Ledger).Select(movement => (movement.Number, movement.Reason)));
        Assert.Equal(Friday13March, writer.Book.Weeks.Draft?.Date);
        Assert.Equal(first + 2, writer.Next);
    }

    [Fact]
    public void Book_WhereNothingWaits_IsTheSameOne()
    {
        var writer = new WeekWriter(Closed);

        Assert.Same(Closed, writer.Book);
    }
}
