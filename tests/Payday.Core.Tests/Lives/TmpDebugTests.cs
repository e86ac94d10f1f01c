using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Core.NotesAtHome;
using Payday.Core.Pots;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Lives;

public class TmpDebugTests
{
    [Fact]
    public void Find()
    {
        var life = new FiveYears(Core.Books.Book.Begin(House with { Opening = House.Opening with { LooseNotes = Notes((5, 6), (10, 2)) } }), 5);
        Book before = life.Book;
        for (LocalDate day = Friday6March; day < Friday6March.PlusYears(5); day = day.PlusDays(1))
        {
            life.Live(day, book =>
            {
                PotNotes notes = PotNotes.Of(book);
                Balances balances = book.Ledger.Balances;
                Money want = balances[LedgerEnd.InCash(Purpose.Buffer)] + Money.Sum(book.Household.Pots.Select(pot => PotMoney.InLooseNotes(balances, pot.Id)), Dollars);
                if (want != notes.Loose.Worth(Dollars))
                {
                    string text = $"{day}: want {want} has {notes.Loose.Worth(Dollars)}\n" + string.Join("\n", book.Ledger.Movements.Skip(before.Ledger.Movements.Count - 25).Select(m => $"{m.Number} {m.Date} {m.From.Key} -> {m.To.Key} {m.Amount} {m.Reason} rev {m.Reverses} {m.Payday}"));
                    text += $"\n before {before.Ledger.Movements.Count} payments {book.Weeks.Purchases[^1]}\nreceived {string.Join(' ', book.Weeks.Received)} entries {book.Weeks.Entries.LastOrDefault()} moves {book.Weeks.Moves.LastOrDefault()}\nreturn {book.Weeks.Returns.LastOrDefault()}";
                    Assert.Fail(text);
                }
                before = book;
            });
        }
    }
}
