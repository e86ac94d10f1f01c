using System.Collections.Immutable;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Store.Documents;
using Payday.Store.Edits;
using Payday.Store.Files;
using Payday.Store.Folders;

namespace Payday.Store.Contents;

/// <summary>The book that documents come to.</summary>
/// <param name="Book">The book.</param>
/// <param name="Weeks">What is stored of what happened between paydays, with what no longer fits the household.</param>
internal sealed record ContentBook(Book Book, WeekRecords Weeks)
{
    /// <summary>Makes a book of documents.</summary>
    /// <returns>The book; null where no household was stored.</returns>
    /// <exception cref="StoreException">The documents don't add up.</exception>
    public static ContentBook? Of(StoreFolder folder, BookContent content) => Records(folder, content) is { } records ? Of(folder, records) : null;

    /// <summary>The records that documents stand for.</summary>
    /// <returns>The records; null where no household was stored.</returns>
    /// <exception cref="StoreException">There are movements without a household.</exception>
    public static StoredRecords? Records(StoreFolder folder, BookContent content) =>
        StoredRecords.Of(content) ?? (content.In(CollectionNames.Movements).Any() ? throw StoreFaults.Damage(folder) : null);

    /// <summary>Makes a book of records.</summary>
    /// <exception cref="StoreException">They don't add up.</exception>
    public static ContentBook Of(StoreFolder folder, StoredRecords records)
    {
        Household household = HouseholdDocument.To(records.Household.Record);
        ImmutableArray<ClosedPayday> closed = records.Closed.All;
        var weeks = new WeekRecords(
            records.Fills.All,
            RecordList.Known(records.Purchases.Records, records.Purchases.Marks((traits, pot) => new RecordMark<PurchaseTraits>((PurchaseTraits)traits, pot))),
            RecordList.Known(records.Counts.Records, records.Counts.Marks((traits, pot) => new RecordMark<CountTraits>((CountTraits)traits, pot))),
            records.Settled.All,
            records.Returns.All,
            records.CountDrafts.One)
        {
            Payments = records.Payments.All,
            Moves = records.Moves.All,
            Entries = records.Entries.All,
            Reconciliations = records.Reconciliations.All,
            Takings = records.Takings.All,
            StatementRules = records.StatementRules.All,
            Readings = records.Readings.All,
            Received = records.Received.All,
            Reconciling = records.Reconciling.One,
            Forms = records.Forms.All,
        };
        RoutineDraft? draft = records.Drafts.One;
        Ledger ledger = StoredLedger.Sound(folder, household, records.Movements, closed, weeks);
        return new ContentBook(
            new Book(household, ledger, closed, draft is null ? null : DraftFit.To(household, draft)) { Weeks = weeks.Fitting(household) },
            weeks);
    }
}
