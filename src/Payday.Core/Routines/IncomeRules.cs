using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Ledgers;

namespace Payday.Core.Routines;

/// <summary>Step 1: the sources that pay on the day, one-offs, and what was carried over.</summary>
internal static class IncomeRules
{
    public static IncomeStep Of(Book book, ScheduledPayday payday, RoutineDraft draft)
    {
        Household household = book.Household;
        var lines = ImmutableArray.CreateBuilder<IncomeLine>();
        foreach (IncomeSource source in household.Sources.Where(source => payday.Sources.Contains(source.Id)))
        {
            bool changed = draft.Incomes.TryGetValue(source.Id, out Money came);
            lines.Add(new IncomeLine(source.Id, source.Name, source.Expected, changed ? came : source.Expected, changed));
        }

        Money nothing = Money.Zero(household.Currency);
        lines.AddRange(draft.OneOffs.Select(pair => new IncomeLine(null, pair.Key, nothing, pair.Value, true)));
        return new IncomeStep(
            lines.ToImmutable(),
            book.Ledger.Balances[LedgerEnd.InAccount(Job.LeftToPlace)],
            Money.Sum(lines.Select(line => line.Amount), household.Currency));
    }
}
