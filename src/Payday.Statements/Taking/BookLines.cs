using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.BankLines;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.DuePayments;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.StatementTaking;
using BankLine = Payday.Statements.Matching.AccountLine;
using BankLineKind = Payday.Statements.Matching.AccountLineKind;

namespace Payday.Statements.Taking;

/// <summary>What a book has that the bank's lines of some days may be, each as the matcher takes it.</summary>
internal sealed class BookLines
{
    // As long as a cheque may be on its way; see PairScore.
    private const int DaysBack = 200;
    private const int DaysAhead = 10;

    // A due may come to this much more or less, where its words or its mandate are known. Common practice, no source.
    private const int TolerancePercent = 25;

    private readonly Book book;
    private readonly PartyHabits habits;

    private BookLines(Book book, PartyHabits habits) => (this.book, this.habits) = (book, habits);

    /// <summary>The partners, each at the place that its line's number says.</summary>
    public static (ImmutableArray<Partner> Partners, ImmutableArray<BankLine> Lines) Of(Book book, PartyHabits habits, LocalDate first, LocalDate last)
    {
        var made = new BookLines(book, habits);
        ImmutableArray<Partner> partners = [.. made.Entered(first, last), .. made.Dues(first, last), .. made.Pays(first, last)];
        return (partners, [.. partners.Select(made.Line)]);
    }

    // Those of taken statements are the bank's own; of the others also those that a reconciliation by hand ticked.
    private IEnumerable<Partner> Entered(LocalDate first, LocalDate last)
    {
        ImmutableHashSet<long> atBank = AccountLines.AtBank(book);
        HashSet<long> taken = [.. book.Weeks.StandingTakings.SelectMany(taking => taking.Lines).SelectMany(line => line.Lines)];
        return AccountLines.Of(book).All
            .Where(line => !taken.Contains(line.Number) && line.Date >= first.PlusDays(-DaysBack) && line.Date <= last.PlusDays(DaysAhead))
            .Select(line => new Partner.Entered(line, atBank.Contains(line.Number)));
    }

    private IEnumerable<Partner> Dues(LocalDate first, LocalDate last) => DueLines.Of(book, last.PlusDays(DaysAhead))
        .Where(due => due.Date >= first.PlusDays(-DaysAhead) && due.Rest.IsPositive)
        .Select(due => new Partner.Due(due));

    private IEnumerable<Partner> Pays(LocalDate first, LocalDate last)
    {
        LocalDate from = LocalDate.Max(book.OpenFrom, first.PlusDays(-DaysAhead));
        return book.Household.Paydays.Between(from, last.PlusDays(DaysAhead))
            .SelectMany(payday => payday.Sources.Select(id => book.Household.Sources.First(source => source.Id == id)).Select(source =>
                new Partner.Pay(LedgerEnd.PaidBy(source.Id), source.Name, payday.Date)));
    }

    private BankLine Line(Partner partner, int number) => partner switch
    {
        Partner.Entered { Line: var line } => new BankLine(number, line.Date, line.Amount.MinorUnits, TextOf(line), KindOf(line))
        {
            Mandate = habits.MandateOf(PartyHabits.TargetOf(line, book)),
            ChequeNumber = line.Cheque is { } cheque ? cheque.ToString(System.Globalization.CultureInfo.InvariantCulture) : "",
        },
        Partner.Due { Line: var due } => new BankLine(number, due.Date, -due.Rest.MinorUnits, NameAnd(due.Name, TargetOf(due.Key.Owner)), BankLineKind.Bill)
        {
            Tolerance = due.Rest.MinorUnits / 100 * TolerancePercent,
            Mandate = habits.MandateOf(TargetOf(due.Key.Owner)),
        },
        Partner.Pay pay => Expected(pay) is var expected
            ? new BankLine(number, pay.Payday, expected.MinorUnits, NameAnd(pay.Name, new LineTarget(LineUse.Income, pay.Source)), BankLineKind.Income)
            {
                Tolerance = expected.MinorUnits / 2,
                Mandate = habits.MandateOf(new LineTarget(LineUse.Income, pay.Source)),
            }
            : throw new InvalidOperationException(),
        _ => throw new ArgumentOutOfRangeException(nameof(partner), partner, "There is no line for it."),
    };

    /// <summary>What a due is paid as.</summary>
    public static LineTarget TargetOf(DueOwner owner) =>
        new(LineUse.For, owner.Bill is { } bill ? LedgerEnd.InAccount(Purpose.SetAside(bill)) : new LedgerEnd.Owed(owner.Debt!.Value));

    private Money Expected(Partner.Pay pay) =>
        pay.Source is LedgerEnd.Outside { SourceId: { } id } ? book.Household.Sources.First(source => source.Id == id).Expected : Money.Zero(book.Household.Currency);

    // What the bank calls it, where that is known from before, stands beside what the person calls it.
    private string NameAnd(string name, LineTarget? target) => habits.PartyOf(target) is { Length: > 0 } party ? $"{name} {party}" : name;

    private string TextOf(AccountLine line) => line switch
    {
        // On a cheque stands what the person wrote.
        { Cheque: not null } => line.What,
        { Kind: AccountLineKind.Withdrawal or AccountLineKind.Deposit } => "",
        { Other: LedgerEnd.Outside { SourceId: { } source } } => NameAnd(Name(source), PartyHabits.TargetOf(line, book)),
        { Other: LedgerEnd.Outside { BillId: { } bill } } => NameAnd(book.Household.Bills.FirstOrDefault(one => one.Id == bill)?.Name ?? bill.Text, PartyHabits.TargetOf(line, book)),
        { Other: LedgerEnd.Owed { DebtId: var debt } } => NameAnd(book.Household.Debts.FirstOrDefault(one => one.Id == debt)?.Name ?? debt.Text, PartyHabits.TargetOf(line, book)),
        { What: "card purchase" or "refund" or "fee" or "interest" or "gift" or "transfer" or "payment" or "income" } => "",
        _ => line.What,
    };

    private string Name(SourceId source) => book.Household.Sources.FirstOrDefault(one => one.Id == source)?.Name ?? source.Text;

    private static BankLineKind KindOf(AccountLine line) => line switch
    {
        { Cheque: not null } => BankLineKind.Cheque,
        { Kind: AccountLineKind.Withdrawal } => BankLineKind.Withdrawal,
        { Kind: AccountLineKind.Deposit } => BankLineKind.Deposit,
        { Other: LedgerEnd.Outside { SourceId: not null } } => BankLineKind.Income,
        { Other: LedgerEnd.Outside { BillId: not null } or LedgerEnd.Owed, Kind: AccountLineKind.Payment } => BankLineKind.Bill,
        { Other: LedgerEnd.Outside { Kind: OutsideKind.Spending }, Kind: AccountLineKind.Payment } => BankLineKind.CardPurchase,
        { Other: LedgerEnd.Outside { Entry: EntryKind.Fee or EntryKind.Interest } } => BankLineKind.Fee,
        _ => BankLineKind.Other,
    };
}
