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
        ImmutableArray<ClosedPayday> closed = [.. records.Closed.Records];
        var weeks = new WeekRecords(
            [.. records.Fills.Records],
            [.. records.Purchases.Records],
            [.. records.Counts.Records],
            [.. records.Settled.Records],
            [.. records.Returns.Records],
            records.CountDrafts.Records is [var count, ..] ? count : null)
        {
            Payments = [.. records.Payments.Records],
            Moves = [.. records.Moves.Records],
            Entries = [.. records.Entries.Records],
            Reconciliations = [.. records.Reconciliations.Records],
            Takings = [.. records.Takings.Records],
            StatementRules = [.. records.StatementRules.Records],
            Readings = [.. records.Readings.Records],
            Received = [.. records.Received.Records],
            Reconciling = records.Reconciling.Records is [var reconciling, ..] ? reconciling : null,
            Forms = [.. records.Forms.Records],
        };
        RoutineDraft? draft = records.Drafts.Records is [var begun, ..] ? begun : null;
        Ledger ledger = StoredLedger.Sound(folder, household, records.Movements.Records, closed, weeks);
        return new ContentBook(
            new Book(household, ledger, closed, draft is null ? null : DraftFit.To(household, draft)) { Weeks = weeks.Fitting(household) },
            weeks);
    }
}
