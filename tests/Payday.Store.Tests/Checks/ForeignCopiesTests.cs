using Payday.Store.Checks;

namespace Payday.Store.Tests.Checks;

public sealed class ForeignCopiesTests
{
    [Theory]
    [InlineData("payday.db", false)]
    [InlineData("payday-log.db", false)]
    [InlineData("payday-new.db", false)]
    [InlineData("payday-new-log.db", false)]
    [InlineData("payday.journal", false)]
    [InlineData("payday-new.journal", false)]
    [InlineData("payday.lock", false)]
    [InlineData("payday.holder", false)]
    [InlineData("payday.backup-to", false)]
    [InlineData("payday-letter.txt", false)]
    [InlineData("payday (copy of the kitchen laptop, 2026-03-06).db", true)]
    [InlineData("payday.conflict-20260306-101112-ABCDEF.journal", true)]
    [InlineData("payday (1).journal", true)]
    [InlineData("payday.db.orig", true)]
    [InlineData("payday.journal~", true)]
    [InlineData("Copy of payday.db", true)]
    [InlineData(".payday.journal.part", true)]
    [InlineData("payday-log (2).db", true)]
    public void IsCopy_NameInAFolder_TellsOursFromOthers(string name, bool isCopy) => Assert.Equal(isCopy, ForeignCopies.IsCopy(name));
}
