using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.Calendar;
using Payday.Core.Households;
using Payday.Core.Ledgers;

namespace Payday.Core.Routines;

/// <summary>Step 1: the sources that pay on the day, others whose pay is there early or late, one-offs, what was carried over, and the overdraft that it pays off.</summary>
internal static class IncomeRules
{
    public static IncomeStep Of(Book book, ScheduledPayday payday, RoutineDraft draft)
    {
        Household household = book.Household;
        Money nothing = Money.Zero(household.Currency);
        var lines = ImmutableArray.CreateBuilder<IncomeLine>();
        foreach (IncomeSource source in household.Sources.Where(source => payday.PaysOf(source.Id) > 0 || draft.Incomes.ContainsKey(source.Id)))
        {
            bool changed = draft.Incomes.TryGetValue(source.Id, out Money came);
            Money expected = payday.Expected(source);
            lines.Add(new IncomeLine(source.Id, source.Name, expected, changed ? came : expected, changed) { Pays = payday.PaysOf(source.Id) });
        }

        lines.AddRange(draft.OneOffs.Select(pair => new IncomeLine(null, pair.Key, nothing, pair.Value, true)));
        Money carriedOver = book.Ledger.Balances[LedgerEnd.InAccount(Purpose.LeftToPlace)];
        Money cameIn = Money.Sum(lines.Select(line => line.Amount), household.Currency);
        return new IncomeStep(
            lines.ToImmutable(),
            carriedOver,
            cameIn,
            OverdraftPayoff.Of(book.Ledger.Balances.Overdrawn, cameIn + carriedOver, draft.ToOverdraft),
            BufferHelp.Of(nothing, nothing, nothing, null));
    }

    /// <summary>What all sources together are expected to pay on a payday.</summary>
    public static Money Expected(Household household, ScheduledPayday payday) => household.Paydays.Expected(payday, household.Currency);
}
