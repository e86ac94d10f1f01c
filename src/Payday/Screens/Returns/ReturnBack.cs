using Payday.Core.Amounts;
using Payday.Core.CashReturns;
using Payday.Screens.Asking;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Returns;

/// <summary>Taking the last cash return back, after a question.</summary>
internal static class ReturnBack
{
    /// <summary>The question; or that there is nothing to take back.</summary>
    public static Way Question(BookSession session)
    {
        if (ReturnUndo.Last(session.Book) is not { } back)
        {
            return new Way.Says("No cash was taken to the bank yet.");
        }

        Money total = Money.Sum(back.Pots.Select(pot => pot.Amount), session.Book.Household.Currency);
        return new Way.To(new TakeBackScreen(
            session,
            $"Take back the cash return of {DateText.Weekday(back.Date)}",
            [
                $"{DateText.Long(back.Date)}: {total.ToString(session.Style)} to the bank.",
                "It will be as if it had not been there: the pots owe that cash again, and notes that were swapped are where they were.",
                "The lines stay in the ledger beside their reverses.",
            ],
            () => ReturnUndo.InTheWay(session.Book, back),
            () => ReturnUndo.Of(session.Book, back, session.Today),
            "The cash return is taken back."));
    }
}
