using Payday.Core.Amounts;
using Payday.Core.Ids;
using Payday.Core.Ledgers;
using Payday.Core.Pots;

namespace Payday.Core.Households;

/// <summary>The movements by which a household's ledger begins.</summary>
public static class Opening
{
    private const string Reason = "opening balance";

    /// <summary>
    /// Everything that was there at the start: set-asides, pots, loose notes, debts, and the rest of the
    /// account as the buffer; of an account below zero what it lacks, as an overdraft.
    /// </summary>
    public static IEnumerable<Movement> Movements(Household household)
    {
        ArgumentNullException.ThrowIfNull(household);
        OpeningBalances opening = household.Opening;
        Money rest = opening.Account;
        foreach ((BillId bill, Money held) in opening.SetAside.Where(pair => pair.Value.IsPositive))
        {
            rest -= held;
            yield return In(LedgerEnd.InAccount(Purpose.SetAside(bill)), held);
        }

        foreach ((PotId id, Money has) in opening.Pots.Where(pair => pair.Value.IsPositive))
        {
            bool inCash = household.Pots.Single(pot => pot.Id == id).Place == Place.Cash;
            rest -= inCash ? Money.Zero(household.Currency) : has;
            yield return In(inCash ? LedgerEnd.InCash(Purpose.Pot(id)) : LedgerEnd.InAccount(Purpose.Pot(id)), has);
        }

        if (rest.IsPositive)
        {
            yield return In(LedgerEnd.InAccount(Purpose.Buffer), rest);
        }
        else if (rest.IsNegative)
        {
            yield return new(0, household.Start, LedgerEnd.InAccount(Purpose.Overdraft), LedgerEnd.Opening, -rest, Reason);
        }

        Money notes = Money.FromMinorUnits(opening.LooseNotes.Sum(pair => pair.Key * pair.Value), household.Currency);
        if (notes.IsPositive)
        {
            yield return In(LedgerEnd.InCash(Purpose.Buffer), notes);
        }

        foreach (Debts.Debt debt in household.Debts.Where(debt => debt.Opening.IsPositive))
        {
            yield return Owe(household, debt);
        }

        Movement In(LedgerEnd end, Money amount) =>
            new(0, household.Start, LedgerEnd.Opening, end, amount, Reason);
    }

    /// <summary>The movement by which a debt begins.</summary>
    internal static Movement Owe(Household household, Debts.Debt debt) =>
        new(0, household.Start, new LedgerEnd.Owed(debt.Id), LedgerEnd.Opening, debt.Opening, Reason);
}
