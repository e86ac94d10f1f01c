using Payday.Core.Reconciling;
using Payday.Screens.Asking;
using Payday.Screens.Shell;
using Payday.Text;

namespace Payday.Screens.Bank;

/// <summary>Taking the last reconciliation back, after a question.</summary>
internal static class ReconciliationBack
{
    /// <summary>The question; or that there is nothing to take back.</summary>
    public static Way Question(BookSession session) => ReconciliationUndo.Last(session.Book) is not { } last
        ? new Way.Says("The account was not compared with the bank yet.")
        : new Way.To(new TakeBackScreen(
            session,
            $"Take back the reconciliation of {DateText.Weekday(last.Date)}",
            [
                $"{DateText.Long(last.Date)}: the bank had {last.Balance.ToString(session.Style)}.",
                "Its lines are on their way again, and can be undone. No money moves.",
                "What was ticked stays for the next one, unless another is begun.",
            ],
            () => ReconciliationUndo.InTheWay(session.Book, last),
            () => ReconciliationUndo.Of(session.Book, last),
            "The reconciliation is taken back; what was ticked is here again."));
}
