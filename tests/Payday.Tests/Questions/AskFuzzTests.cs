using CsCheck;
using Payday.Core.Books;

namespace Payday.Tests.Questions;

/// <summary>Whatever is typed, nothing ends the program, no sign of a terminal's gets out, and the money adds up.</summary>
public sealed class AskFuzzTests
{
    private static readonly string[] Words =
    [
        "", "", "", "", "yes", "no", "back", "menu", "?", "paid", "unpaid", "proposal", "clear", "notes", "home", "teller", "machine 20 50 / 200", "all", "free", "skip", "none", "uncounted",
        "payday", "bills", "count", "card", "return", "bank", "fill", "move", "entry", "received", "food", "fares", "buffer", "phones", "dental plan", "reserve", "out", "counted", "account", "cash",
        "12.40", "5", "0", "-3", "400", "1e9", "99999999999999999", "92233720368547758.07", "12+3", "yesterday", "2026-03-01", "31 feb", "Food=20", "Gift=50", "20=3,10=1", "20=9999999", "Food=3; Fares", "missing Coin=1", "even", "when due", "finished", "every year",
    ];

    private static readonly Gen<string> Word = Gen.Int[0, Words.Length - 1].Select(at => Words[at]);

    private static readonly Gen<string> Line = Gen.Select(Gen.Int[0, 9], Word, Gen.String[Gen.Char, 0, 30]).Select((which, word, text) => which > 0 ? word : text.Replace("\n", "", StringComparison.Ordinal));

    [Fact]
    public void Lines_OfAnyKind_LeaveABookThatAddsUp() =>
        Line.Array[1, 120].Sample(
            lines =>
            {
                using var book = new AskedBook();
                string[] said = book.Ask(lines);
                Assert.All(said, line => Assert.DoesNotContain(line, char.IsControl));
                book.IsSound();
                // What is proposed at the menu is proposed once each time.
                Assert.Equal(said[^1].Split('?')[0], book.Ask()[^1].Split('?')[0]);
            },
            iter: 40,
            threads: 1);

    [Fact]
    public void Lines_InWeeksAfterAPayday_LeaveABookThatAddsUp() =>
        Gen.Select(Line.Array[1, 100], Gen.Int[0, 20]).Sample(
            (lines, days) =>
            {
                using AskedBook book = new AskedBook().Closed();
                book.Today = book.Today.PlusDays(days);
                Book before = book.Book;
                Assert.All(book.Ask(lines), line => Assert.DoesNotContain(line, char.IsControl));
                book.IsSound();
                Assert.True(book.Book.Ledger.Movements.Take(before.Ledger.Movements.Count).SequenceEqual(before.Ledger.Movements));
            },
            iter: 40,
            threads: 1);
}
