using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Bills;
using Payday.Core.Books;
using Payday.Core.Faults;
using Payday.Core.Ledgers;
using Payday.Core.Routines;
using Payday.Store.Texts;
using Payday.Text;

namespace Payday.Reports;

/// <summary>What needs doing.</summary>
internal static class OverviewNeeds
{
    /// <summary>A sentence each; none where all is well.</summary>
    public static IEnumerable<string> Of(Book book)
    {
        NumberStyle style = book.Household.Settings.Numbers;
        foreach (string fault in LedgerCheck.Faults(book.Ledger.Balances).Select(fault => LedgerTexts.Of(fault, style)))
        {
            yield return fault;
        }

        Result<LocalDate> next = Routine.Next(book);
        Result<RoutinePlan> plan = next.Ok ? Routine.Plan(book, book.Draft ?? new RoutineDraft(next.Value)) : Result.Refused<RoutinePlan>(next.Faults);
        if (!plan.Ok)
        {
            yield break;
        }

        if (book.Ledger.Balances.Overdrawn is { IsPositive: true } overdrawn)
        {
            yield return $"The overdraft is {overdrawn.ToString(style)}; what comes in pays it off first, and the bank's terms decide what it costs.";
        }

        if (plan.Value.LeftToPlace.IsNegative)
        {
            yield return $"The next payday is {(-plan.Value.LeftToPlace).ToString(style)} short; look at its routine.";
        }

        foreach (LateDue late in plan.Value.Bills.Late)
        {
            yield return $"{late.Due.Name}, {DateText.Long(late.Due.Date)}: {late.Short.ToString(style)} short with the pay expected.";
        }
    }
}
