using CsCheck;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.NotesAtHome;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.NotesAtHome;

/// <summary>Notes gone on with from where they were known are those followed from the beginning.</summary>
public class NoteReplayTests
{
    private static readonly Household Begun = House with { Opening = House.Opening with { LooseNotes = Notes((5, 6), (10, 2)) } };

    // From a book of up to six events before, whatever they were.
    [Fact]
    public void Of_AnyBookBefore_IsAsFollowedFromTheBeginning() =>
        Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[10, 60]).Sample(
            (seed, days) => Lived(seed, days, (before, book) => Assert.Equal(Said(NoteReplay.Of(book)), Said(NoteReplay.Of(before, book)))),
            iter: 30);

    // So that the property above is about both.
    [Fact]
    public void Of_TheEventsOfALife_GoesOnAfterMostAndBeginsAnewAfterSome()
    {
        var known = new Dictionary<bool, int> { [true] = 0, [false] = 0 };
        Lived(7, 200, (before, book) => known[NewEvents.Of(before, book) is not null]++);

        Assert.True(known[true] > 100, $"{known[true]} times");
        Assert.True(known[false] > 20, $"{known[false]} times");
    }

    [Fact]
    public void GoingOn_AfterAPayday_IsWhatTheBookIsAskedFor()
    {
        Book later = Close(Closed.Count(Friday13March, "food", 20), Friday6March.PlusDays(14));

        Assert.Same(PotNotes.GoingOn(Closed, later), PotNotes.Of(later));
        Assert.NotNull(NewEvents.Of(Closed, later));
    }

    // It is told where the movement before it stands, together with what was told there already.
    [Fact]
    public void Of_ACountThatMovedNothing_BeginsAnew()
    {
        Book before = Closed.Count(Friday13March, "food", 20);
        Book book = before.Count(Friday13March, "food", ByNotes((20, 1)));

        Assert.Equal(before.Ledger, book.Ledger);
        Assert.Null(NewEvents.Of(before, book));
        Assert.Equal(Notes((20, 1)), NoteReplay.Of(before, book).InWallet(new("food")));
    }

    private static void Lived(int seed, int days, Action<Book, Book> check)
    {
        var life = new FiveYears(Book.Begin(Begun), seed);
        var random = new Random(seed);
        List<Book> books = [life.Book];
        for (int day = 0; day < days; day++)
        {
            life.Live(Friday6March.PlusDays(day), book =>
            {
                check(books[^random.Next(1, Math.Min(books.Count, 6) + 1)], book);
                books.Add(book);
            });
        }
    }

    private static IEnumerable<string> Said(PotNotes notes) => notes.Stacks
        .Select(stack => $"{stack.Key.PotId} {stack.Key.InWallet}: {(stack.Value.Notes is { } there ? string.Join(' ', there) : "?")}, {stack.Value.Worth.ToPlain()}")
        .Order(StringComparer.Ordinal);
}
