using System.Collections.Immutable;
using System.Globalization;
using NodaTime;
using NodaTime.Text;
using Payday.Core.Books;
using Payday.Core.Households;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Reports;

/// <summary>The book as tables.</summary>
internal static class BookTables
{
    /// <summary>Ledger, pots, bills with what they come to today, debts, the lines of statements that were taken, and the rules for such lines.</summary>
    public static ImmutableArray<CsvTable> Of(Book book, LocalDate today)
    {
        Household household = book.Household;
        Balances balances = book.Ledger.Balances;
        return
        [
            new("ledger", ["number", "date", "from", "to", "amount", "currency", "reason", "payday", "reverses"],
            [
                .. book.Ledger.Movements.Select(movement => ImmutableArray.Create(
                    movement.Number.ToString(CultureInfo.InvariantCulture),
                    LocalDatePattern.Iso.Format(movement.Date),
                    EndText.Of(household, movement.From),
                    EndText.Of(household, movement.To),
                    movement.Amount.ToPlain(),
                    household.Currency.Code,
                    movement.Reason,
                    movement.Payday is { } payday ? LocalDatePattern.Iso.Format(payday) : "",
                    movement.Reverses?.ToString(CultureInfo.InvariantCulture) ?? "")),
            ]),
            new("pots", ["pot", "where", "has", "not in notes", "currency"],
            [
                .. household.Pots.Select(pot => ImmutableArray.Create(
                    pot.Name,
                    PotsReport.Place(pot),
                    PotMoney.InItsPlace(balances, pot.Id).ToPlain(),
                    balances[LedgerEnd.InAccount(Purpose.KeptBack(pot.Id))].ToPlain(),
                    household.Currency.Code)),
            ]),
            new("bills", ["bill", "amount", "set aside", "currency"],
            [
                .. household.Bills.Select(bill => ImmutableArray.Create(
                    bill.Name,
                    bill.AmountOn(today).ToPlain(),
                    balances[LedgerEnd.InAccount(Purpose.SetAside(bill.Id))].ToPlain(),
                    household.Currency.Code)),
            ]),
            new("debts", ["debt", "owed", "yearly rate", "currency"],
            [
                .. household.Debts.Select(debt => ImmutableArray.Create(
                    debt.Name,
                    balances.OwedOn(debt.Id).ToPlain(),
                    debt.YearlyRate.ToString(CultureInfo.InvariantCulture),
                    household.Currency.Code)),
            ]),
            Statements(book),
            Rules(book),
        ];
    }

    // Each line of each taking, as it came: one that was left and taken later is there twice, as are those that were taken back.
    // In and out apart: a cell that begins with a minus is marked as text, as it could be a formula.
    private static CsvTable Statements(Book book) => new(
        "statements",
        ["statement", "to", "taken back", "date", "in", "out", "currency", "party", "text", "mandate", "became", "ledger lines"],
        [
            .. book.Weeks.Takings.SelectMany(taking => taking.Lines.Select(line => ImmutableArray.Create(
                taking.Number.ToString(CultureInfo.InvariantCulture),
                LocalDatePattern.Iso.Format(taking.To),
                taking.Undone ? "yes" : "",
                LocalDatePattern.Iso.Format(line.Date),
                line.Amount.IsPositive ? line.Amount.ToPlain() : "",
                line.Amount.IsPositive ? "" : (-line.Amount).ToPlain(),
                line.Amount.Currency.Code,
                line.Party,
                line.Text,
                line.Mandate,
                line switch
                {
                    { IsLeft: true } => "left",
                    { Wrote: null } => "matched",
                    { Wrote.Kind: WrittenKind.Payment } => "payment",
                    { Wrote.Kind: WrittenKind.Purchase } => "card purchase",
                    { Wrote.Kind: WrittenKind.Entry } => "entry",
                    { Wrote.Kind: WrittenKind.Return } => "cash return",
                    _ => "move",
                },
                string.Join(' ', line.Lines.Select(number => number.ToString(CultureInfo.InvariantCulture)))))),
        ]);

    private static CsvTable Rules(Book book) => new(
        "statement-rules",
        ["lines with", "become"],
        [.. book.Weeks.StatementRules.Select(rule => ImmutableArray.Create(rule.Words, TargetText.Name(book.Household, rule.Target)))]);
}
