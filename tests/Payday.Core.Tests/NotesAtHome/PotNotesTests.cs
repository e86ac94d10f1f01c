using Payday.Core.Books;
using Payday.Core.Cash;
using Payday.Core.Households;
using Payday.Core.Ids;
using Payday.Core.NotesAtHome;
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
        Assert.NotEqual(NoteBag.Empty, PotNotes.Of(Closed).AtHome(new PotId("food")));

        // Without its payday nothing says which notes the ledger's cash is.
        Assert.Null(PotNotes.Of(Closed with { Closed = [] }).AtHome(new PotId("food")));
        Assert.NotNull(PotNotes.Of(Closed).AtHome(new PotId("food")));

        Book shelved = Closed with { Closed = [], Household = House with { Pots = [] } };
        Assert.NotSame(PotNotes.Of(Closed with { Closed = [] }), PotNotes.Of(shelved));
        Assert.NotSame(PotNotes.Of(shelved), PotNotes.Of(shelved with { Weeks = WeekRecords.None with { Settled = [] } }));
    }
}
