using System.Collections.Immutable;
using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Bills;
using Payday.Core.DuePayments;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Reports;
using Payday.Screens.Forms;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Dues;

/// <summary>One due ticked: how much left the account, and when; all of it today, unless something else is typed.</summary>
/// <param name="session">The book.</param>
/// <param name="due">The due, which waits.</param>
/// <param name="stored">Told of the payment once it is written.</param>
internal sealed class DueScreen(BookSession session, DueLine due, Action<DuePayment> stored)
    : BookFormScreen(session, NameOf(due.Key), "paid", "Tick it: so much has left the account on that day, as the lines under the fields say.")
{
    private const string Amount = "amount";
    private const string Day = "day";

    /// <inheritdoc/>
    public override string Title => $"{due.Name}, paid";

    /// <inheritdoc/>
    protected override string Aside => $"due {DateText.Weekday(due.Date)}";

    /// <inheritdoc/>
    protected override ImmutableArray<FormField> Fields =>
    [
        Session.Amount(Amount, "Amount", $"How much left the account; less than {due.Rest.ToString(Session.Style)} leaves the rest to pay.") with { Usual = due.Rest.ToString(Session.Style) },
        Session.Day(Day, "Day", "The day on which it left the account, like 2026-03-12 or 12 Mar; yesterday works too."),
    ];

    /// <inheritdoc/>
    protected override Result<Book>? After =>
        TypedFields.AmountIn(Session, Text(Amount)) is { Ok: true } amount && TypedFields.DayIn(Session, Text(Day)) is { Ok: true } day
            ? Paying.Enter(Book, new DueEntry(due.Key, day.Value, amount.Value), Session.Today)
            : null;

    /// <inheritdoc/>
    protected override (string Field, string Todo) Missing => (Amount, "Type how much first.");

    /// <inheritdoc/>
    protected override IEnumerable<string> Changes(Book after)
    {
        DuePayment payment = after.Weeks.Payments[^1];
        return
        [
            payment.Completes ? $"{due.Name} of {DateText.Weekday(due.Date)} is paid then." : $"{(payment.Asked!.Value - payment.Amount).ToString(Session.Style)} of {due.Name} is still to pay then.",
            .. BalanceChanges.Of(Book, after, [due.Key.Debt is { } debt ? LedgerEnd.InAccount(Purpose.ForDebt(debt)) : LedgerEnd.InAccount(Purpose.SetAside(due.Key.Bill!.Value)), LedgerEnd.InAccount(Purpose.Buffer), .. due.Key.Debt is { } owed ? [new LedgerEnd.Owed(owed)] : Array.Empty<LedgerEnd>()]),
        ];
    }

    /// <inheritdoc/>
    protected override void Stored() => stored(Book.Weeks.Payments[^1]);

    // Each due has a form of its own, so that none stands in another's.
    private static string NameOf(DueKey key) =>
        $"due {(key.Bill is { } bill ? "bill " + bill.Text : "debt " + key.Debt!.Value.Text)} {LocalDatePattern.Iso.Format(key.Scheduled)}";
}
