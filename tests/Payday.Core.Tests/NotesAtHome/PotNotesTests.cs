using Payday.Core.AccountEntries;
using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Moves;
using Payday.Core.NotesAtHome;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.NotesAtHome;

/// <summary>Notes are followed once for a ledger, and anew where other records of it are asked about.</summary>
public class PotNotesTests
{
    [Fact]
    public void Of_ABookThatDiffersInItsDraft_IsNotFollowedAgain() => Assert.Same(PotNotes.Of(Closed), PotNotes.Of(Closed with { Draft = null }));

    [Fact]
    public void Of_TheSameLedgerWithOtherRecords_IsTheirs()
    {
        Assert.NotEqual(Core.Cash.Notes.None, PotNotes.Of(Closed).AtHome(new PotId("food")));

        // Without its payday nothing says which notes the ledger's cash is.
        Assert.Null(PotNotes.Of(Closed with { Closed = [] }).AtHome(new PotId("food")));
        Assert.NotNull(PotNotes.Of(Closed).AtHome(new PotId("food")));

        Book shelved = Closed with { Closed = [], Household = House with { Pots = [] } };
        Assert.NotSame(PotNotes.Of(Closed with { Closed = [] }), PotNotes.Of(shelved));
        Assert.NotSame(PotNotes.Of(shelved), PotNotes.Of(shelved with { Weeks = WeekRecords.None with { Settled = [] } }));
    }

    [Fact]
    public void Of_LooseNotesLostBeforeAPaydayAndFoundToBeThere_HasThemAgain()
    {
        Household house = House with { Opening = House.Opening with { LooseNotes = Notes((50, 1)) }, Settings = House.Settings with { Cash = new CashPieces([Usd(50), Usd(20), Usd(10), Usd(5)], []) } };
        var lost = new EntryWish(Friday6March, EntryKind.Loss, MoveEnds.Loose, Usd(-50), "gone") { IsCash = true };
        Book book = Close(Entering.Enter(Book.Begin(house), lost).Value!, Friday6March);

        Book undone = Entering.Undo(book, 1, Friday13March).Value!;
        Assert.Equal(Notes((50, 1)), PotNotes.Of(undone).Loose);
    }
}
