using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Ledgers;
using Payday.Store.Documents;
using Payday.Store.Edits;

namespace Payday.Store.Contents;

/// <summary>All that is stored, as the records that it stands for.</summary>
/// <param name="household">The text of the household file, and the digest of its document.</param>
/// <param name="currency">The household's currency.</param>
internal sealed class StoredRecords(Stored<string> household, Currency currency)
{
    /// <summary>The text of the household file, and the digest of its document.</summary>
    public Stored<string> Household { get; set; } = household;

    /// <summary>The household's currency.</summary>
    public Currency Currency => currency;

    /// <summary>The movements, of which no digest is kept: their documents never change.</summary>
    public MovementColumn Movements { get; } = new();

    /// <summary>The closed paydays.</summary>
    public Column<ClosedPayday> Closed { get; } = new(ClosedDocument.Form);

    /// <summary>The routine begun, if any.</summary>
    public Column<RoutineDraft> Drafts { get; } = new(DraftDocument.Form);

    /// <summary>The wallet fills.</summary>
    public Column<WalletFill> Fills { get; } = new(FillDocument.Form);

    /// <summary>The card purchases.</summary>
    public Column<CardPurchase> Purchases { get; } = new(PurchaseDocument.Form);

    /// <summary>The counts.</summary>
    public Column<WeekCount> Counts { get; } = new(CountDocument.Form);

    /// <summary>The differences cleared up.</summary>
    public Column<SettledDifference> Settled { get; } = new(SettledDocument.Form);

    /// <summary>The cash returns.</summary>
    public Column<CashReturn> Returns { get; } = new(ReturnDocument.Form);

    /// <summary>The count begun, if any.</summary>
    public Column<CountDraft> CountDrafts { get; } = new(CountDraftDocument.Form);

    /// <summary>The payments of dues.</summary>
    public Column<DuePayment> Payments { get; } = new(PaymentDocument.Form);

    /// <summary>The moves.</summary>
    public Column<Move> Moves { get; } = new(MoveDocument.Form);

    /// <summary>The account entries.</summary>
    public Column<AccountEntry> Entries { get; } = new(EntryDocument.Form);

    /// <summary>The reconciliations.</summary>
    public Column<Reconciliation> Reconciliations { get; } = new(ReconciliationDocument.Form);

    /// <summary>The notes received.</summary>
    public Column<NotesReceived> Received { get; } = new(ReceivedDocument.Form);

    /// <summary>The statements taken.</summary>
    public Column<TakingOfStatements> Takings { get; } = new(TakingDocument.Form);

    /// <summary>The rules for lines of statements.</summary>
    public Column<StatementRule> StatementRules { get; } = new(StatementRuleDocument.Form);

    /// <summary>How files of the bank's are read.</summary>
    public Column<KeptReading> Readings { get; } = new(ReadingDocument.Form);

    /// <summary>The reconciliation begun, if any.</summary>
    public Column<ReconciliationDraft> Reconciling { get; } = new(ReconcilingDocument.Form);

    /// <summary>The forms begun.</summary>
    public Column<FormDraft> Forms { get; } = new(FormDocument.Form);

    /// <summary>All of them but the household.</summary>
    public IEnumerable<IColumn> Columns =>
    [
        Movements, Closed, Drafts, Fills, Purchases, Counts, Settled, Returns, CountDrafts,
        Payments, Moves, Entries, Reconciliations, Received, Reconciling, Forms,
        Takings, StatementRules, Readings,
    ];

    /// <summary>How many records there are.</summary>
    public int Count => 1 + Columns.Sum(column => column.Count);

    /// <summary>The records that documents stand for.</summary>
    /// <returns>The records; null where there is no household.</returns>
    /// <exception cref="Exception">Anything: they are not such documents.</exception>
    public static StoredRecords? Of(BookContent content)
    {
        if (content.Stored(CollectionNames.Households) is not [var household, ..])
        {
            return null;
        }

        Currency currency = HouseholdDocument.To(household.Record).Currency;
        var records = new StoredRecords(new(household.Record["file"].AsString, household.Digest), currency);
        foreach (IColumn column in records.Columns)
        {
            column.Take(content.Stored(column.Collection), currency);
        }

        return records;
    }
}
