using Payday.Core.AccountEntries;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using static Payday.Core.Tests.Lives.WeekHomes;

namespace Payday.Core.Tests.AccountEntries;

public class EntryEndsTests
{
    // What it is for, then what it usually is where it comes in, goes out, comes in as cash, goes out as cash.
    [Theory]
    [InlineData("owed/card", EntryKind.Borrowing, EntryKind.Fee, EntryKind.Borrowing, EntryKind.Fee)]
    [InlineData("cash/buffer", EntryKind.Gift, EntryKind.Loss, EntryKind.Gift, EntryKind.Loss)]
    [InlineData("cash/pot:food", EntryKind.Refund, EntryKind.Payment, EntryKind.Gift, EntryKind.Loss)]
    [InlineData("account/pot:gifts", EntryKind.Refund, EntryKind.Payment, EntryKind.Gift, EntryKind.Loss)]
    [InlineData("account/set-aside:rent", EntryKind.Refund, EntryKind.Payment, EntryKind.Gift, EntryKind.Loss)]
    [InlineData("account/buffer", EntryKind.Interest, EntryKind.Fee, EntryKind.Gift, EntryKind.Loss)]
    [InlineData("account/left-to-place", EntryKind.Gift, EntryKind.Fee, EntryKind.Gift, EntryKind.Loss)]
    public void UsualKind_OfAnEnd_IsWhatMostSuchAre(string key, EntryKind comesIn, EntryKind goesOut, EntryKind cashIn, EntryKind cashOut)
    {
        LedgerEnd end = LedgerEnd.FromKey(key);

        Assert.Equal(
            (comesIn, goesOut, cashIn, cashOut),
            (EntryEnds.UsualKind(end, true, false), EntryEnds.UsualKind(end, false, false), EntryEnds.UsualKind(end, true, true), EntryEnds.UsualKind(end, false, true)));
    }

    [Fact]
    public void Of_ABook_IsAllThatMoneyCanBeFor() => Assert.Equal(
        ["account/left-to-place", "cash/pot:food", "cash/pot:fares", "cash/pot:boots", "account/pot:gifts", "owed/card", "account/buffer", "cash/buffer"],
        EntryEnds.Of(Closed).Select(end => end.Key));
}
