using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Store.Changes;
using Payday.Store.Contents;
using Payday.Store.Edits;

namespace Payday.Faults;

/// <summary>The digest over all documents of a book as it was loaded, reckoned from what the person is shown and not from what a file says.</summary>
internal static class BookDigest
{
    public static Digest Of(Book? book)
    {
        if (book is null)
        {
            return default;
        }

        var edits = new EditList(new StoredDigests(null), default);
        var all = new BookChange { Household = book.Household, Movements = [.. book.Ledger.Movements], Draft = book.Draft, Weeks = book.Weeks };
        new ChangeDocuments(all, 0, null).AddTo(edits);
        foreach (ClosedPayday closed in book.Closed)
        {
            new ChangeDocuments(new BookChange { Closed = [closed] }, 0, null).AddTo(edits);
        }

        return edits.After;
    }
}
