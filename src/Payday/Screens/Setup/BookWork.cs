using System.Collections.Immutable;
using Humanizer;
using NodaTime;
using Payday.Core.Books;
using Payday.Core.Drafts;
using Payday.Core.Faults;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Screens.Setup.Forms;
using Payday.Screens.Shell;
using Payday.Statements.Files;
using Payday.Statements.Taking;
using Payday.Store.Starts;
using Payday.Text;
using Payday.Texts;

namespace Payday.Screens.Setup;

/// <summary>The household of a book: a change is stored when the whole is right.</summary>
internal sealed class BookWork(BookSession session) : SetupWork
{
    private HouseholdDraft draft = HouseholdDraft.Of(session.Book.Household);
    private string notice = "";
    private Func<Household, Func<WeekRecords, WeekRecords>>? learned;

    /// <inheritdoc/>
    public override HouseholdDraft Draft => draft;

    /// <inheritdoc/>
    public override LocalDate Today => session.Today;

    /// <inheritdoc/>
    public override bool TakesParts => false;

    /// <inheritdoc/>
    public override bool HasHistory => !session.Book.Closed.IsEmpty;

    /// <inheritdoc/>
    public override string Notice => notice;

    /// <inheritdoc/>
    public override BegunItems Begun => session.BegunItems;

    /// <inheritdoc/>
    public override void KeepBegun(BegunItems begun) => session.BegunItems = begun;

    /// <inheritdoc/>
    public override void ForgetBegun(BegunItems begun) => session.BegunItems = begun;

    /// <inheritdoc/>
    public override StartStatements Statements => session.Statements;

    /// <inheritdoc/>
    public override void KeepStatements(StartStatements statements) => session.Statements = statements;

    /// <inheritdoc/>
    public override void MarkStatements(StartStatements statements) => session.Statements = statements;

    /// <inheritdoc/>
    public override void MarkLearned(Func<Household, Func<WeekRecords, WeekRecords>> learned) => this.learned = learned;

    /// <inheritdoc/>
    public override ImmutableArray<CsvProfile> Readings => [.. session.Book.Weeks.Readings.Select(KeptReadings.ProfileOf)];

    /// <inheritdoc/>
    public override Func<DraftPlace, string?> FaultsOf(HouseholdDraft next)
    {
        ImmutableArray<Fault> faults = [.. HouseholdCheck.Of(next).Faults];
        return place => FaultAt(faults, place);
    }

    /// <inheritdoc/>
    public override string? Put(HouseholdDraft next, DraftPlace place)
    {
        Result<Household> household = HouseholdCheck.Of(next);
        if (!household.Ok)
        {
            return FaultAt(household.Faults, place) ?? FormTexts.Named(household.Fault, next, Style);
        }

        bool hadDraft = session.Book.Draft is not null;
        Func<Household, Func<WeekRecords, WeekRecords>>? also = learned;
        learned = null;
        if (session.Change(household.Value, also?.Invoke(household.Value)) is { } refusal)
        {
            return refusal;
        }

        notice = hadDraft && session.Book.Draft is null ? "The routine begun was for a date that is no payday any more; it was dropped." : "";
        draft = HouseholdDraft.Of(session.Book.Household);
        return null;
    }

    /// <inheritdoc/>
    public override string? WhyKept(DraftMember list, string id) => WhyKept(session.Book, list, id);

    /// <inheritdoc/>
    public override decimal? Owed(DebtDraft debt) => Owed(session.Book, debt);

    /// <summary>Why an item of a list of a book can't be taken out, or null.</summary>
    internal static string? WhyKept(Book book, DraftMember list, string id)
    {
        if (book.Closed.IsEmpty)
        {
            return null;
        }

        Movement[] movements = [.. book.Ledger.Movements.Where(Subject(list, id).IsIn)];
        return movements.Length == 0
            ? null
            : $"{"ledger line".ToQuantity(movements.Length)}, the last of {DateText.Long(movements[^1].Date)}, {(movements.Length == 1 ? "names" : "name")} it, so it stays.";
    }

    /// <summary>What is owed on a debt by the ledger of a book, in whole units; of one to be added what it has.</summary>
    internal static decimal? Owed(Book book, DebtDraft debt) => debt.Id is { } id ? book.Ledger.Balances.OwedOn(new(id)).ToDecimal() : debt.Balance;

    private string? FaultAt(ImmutableArray<Fault> faults, DraftPlace place) =>
        faults.FirstOrDefault(fault => fault is DraftFault found && place.Holds(found.Place)) is { } first ? FormTexts.Of(first, Style) : null;

    private static LedgerSubject Subject(DraftMember list, string id) =>
        list == HouseholdDraft.Members.Sources ? new LedgerSubject.OfSource(new(id))
        : list == HouseholdDraft.Members.Bills ? new LedgerSubject.OfBill(new(id))
        : list == HouseholdDraft.Members.Debts ? new LedgerSubject.OfDebt(new(id))
        : new LedgerSubject.OfPot(new(id));
}
