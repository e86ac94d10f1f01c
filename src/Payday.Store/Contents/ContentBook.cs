using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Core.Weeks;
using Payday.Store.Documents;

namespace Payday.Store.Contents;

/// <summary>The book that documents come to.</summary>
/// <param name="Book">The book.</param>
/// <param name="Weeks">What is stored of what happened between paydays, with what no longer fits the household.</param>
internal sealed record ContentBook(Book Book, WeekRecords Weeks)
{
    /// <summary>Makes a book of documents.</summary>
    /// <returns>The book; null where no household was stored.</returns>
    /// <exception cref="StoreException">The documents don't add up.</exception>
    public static ContentBook? Of(StoreFolder folder, BookContent content)
    {
        if (content.In(CollectionNames.Households).FirstOrDefault() is not { } stored)
        {
            return content.In(CollectionNames.Movements).Any() ? throw StoreFaults.Damage(folder) : null;
        }

        Household household = HouseholdDocument.To(stored);
        Currency currency = household.Currency;
        ImmutableArray<Movement> movements =
            [.. content.In(CollectionNames.Movements).Select(document => MovementDocument.To(document, currency)).OrderBy(movement => movement.Number)];
        ImmutableArray<ClosedPayday> closed =
            [.. content.In(CollectionNames.Closed).Select(document => ClosedDocument.To(document, currency)).OrderBy(payday => payday.Payday)];
        RoutineDraft? draft = content.In(CollectionNames.Drafts).Select(document => DraftDocument.To(document, currency)).FirstOrDefault();
        WeekRecords weeks = WeekDocuments.Read(content, currency);
        Ledger ledger = StoredLedger.Sound(folder, household, movements, closed, weeks);
        return new ContentBook(
            new Book(household, ledger, closed, draft is null ? null : DraftFit.To(household, draft)) { Weeks = weeks.Fitting(household) },
            weeks);
    }
}
