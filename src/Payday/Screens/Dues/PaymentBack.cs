using Payday.Core.Books;
using Payday.Core.DuePayments;
using Payday.Core.Undo;
using Payday.Screens.Asking;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Dues;

/// <summary>Taking a payment of a due back, after a question.</summary>
internal static class PaymentBack
{
    /// <summary>The question.</summary>
    /// <param name="session">The book.</param>
    /// <param name="number">The number of the payment, one that there is.</param>
    public static TakeBackScreen Question(BookSession session, long number)
    {
        DuePayment payment = session.Book.Weeks.Payments[(int)number - 1];
        return new TakeBackScreen(
            session,
            "Take a payment back",
            [
                $"{BookEntry.NameOf(session.Book, payment.Key.Owner)}: {payment.Amount.ToString(session.Style)} of {DateText.Day(payment.Date)}.",
                "It is to be paid again, and the account has its money for it, as if it had not been ticked.",
            ],
            () => Paying.InTheWay(session.Book, number),
            () => Paying.Undo(session.Book, number, session.Today),
            "The payment is taken back.");
    }
}
