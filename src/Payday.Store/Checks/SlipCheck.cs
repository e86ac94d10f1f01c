using NodaTime.Text;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Households;
using Payday.Core.Routines;

namespace Payday.Store.Checks;

/// <summary>Holds the slips of closed paydays against the notes in the pots and the movements of the ledger.</summary>
internal static class SlipCheck
{
    /// <summary>What doesn't agree.</summary>
    public static IEnumerable<Finding> Of(Book book)
    {
        Currency currency = book.Household.Currency;
        NumberStyle style = book.Household.Settings.Numbers;
        foreach (ClosedPayday closed in book.Closed)
        {
            Money slip = NoteBag.Worth(closed.Withdraw, currency) + NoteBag.Worth(closed.Reused, currency);
            Money pots = Money.Sum(closed.Parts.Select(part => NoteBag.Worth(part.Notes, currency)), currency);
            string date = LocalDatePattern.Iso.Format(closed.Payday);
            if (slip != pots)
            {
                yield return new Finding(
                    "slips",
                    $"The slip of {date} and the notes used again come to {slip.ToString(style)}, but {pots.ToString(style)} went into the pots.",
                    date,
                    "Reopen that payday or correct the pots by a count.");
            }

            if (closed.FirstMovement > closed.LastMovement + 1 || closed.FirstMovement < 1)
            {
                yield return new Finding("slips", $"The payday of {date} names movements {closed.FirstMovement} to {closed.LastMovement}, which are none.", date, "Go back to a backup with payday restore.");
            }
        }
    }
}
