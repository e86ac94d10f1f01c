using Payday.Core.Books;
using Payday.Core.Fills;
using Payday.Core.Ids;
using Payday.Core.Tests.Lives;
using static Payday.Core.Tests.Amounts.Amount;
using static Payday.Core.Tests.Lives.Homes;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.Fills;

public class ToFetchTests
{
    private static readonly FillKey First = new(Friday6March, Friday6March, new PotId("food"));

    [Fact]
    public void Of_AClosedPayday_IsWhatItsSlipAsksFor()
    {
        Assert.Null(ToFetch.Of(Book.Begin(House)));
        Assert.Equal(Closed.LastClosed!.Withdraw.Worth(Dollars), ToFetch.Of(Closed));
    }

    // A card purchase that takes of a fill says nothing of the bank; a person who fills, or skips a fill, does.
    [Fact]
    public void Of_AFillThatIsMarked_IsNothingAnyMore_UntilThatIsTakenBack()
    {
        Book bought = Closed.Spend("food", 18, Friday6March);
        Assert.Equal(ToFetch.Of(Closed), ToFetch.Of(bought));

        foreach (Book marked in new[] { Closed, bought }.SelectMany(book => new[] { FillState.Done, FillState.Skipped }.Select(state => WalletFills.Mark(book, First, state, Friday6March)).Where(marked => marked.Ok).Select(marked => marked.Value!)))
        {
            Assert.Null(ToFetch.Of(marked));
            Assert.NotNull(ToFetch.Of(WalletFills.Unmark(marked, First, Friday6March).Value!));
        }
    }
}
