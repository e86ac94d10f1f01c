using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Ids;
using Payday.Core.Pots;

namespace Payday.Core.Routines;

/// <summary>What can't be paid when even the floors of the pots are too much.</summary>
internal static class UnpayableRules
{
    /// <param name="payday">The day.</param>
    /// <param name="toPlace">All that is there today, below zero where more was placed before than there was.</param>
    /// <param name="bills">Step 2, with nothing set aside for later.</param>
    /// <param name="debts">Step 3.</param>
    /// <param name="pots">Step 4.</param>
    /// <returns>What lacks adds up to what is missing from the day, so where something is missing, something is named.</returns>
    /// <remarks>
    /// What is held for a bill pays its own dues first; what it has beyond them helps the other bills, and bills alone.
    /// What there is today goes to the pots' floors, to bills and minimums (<see cref="Unpayable.Find"/>), and last to what
    /// the person put in a pot above its floor.
    /// </remarks>
    public static ImmutableArray<Unpayable> Of(LocalDate payday, Money toPlace, BillsStep bills, DebtsStep debts, PotsStep pots)
    {
        // What waited for a debt and isn't needed any more is there today too.
        Money freed = Sum(debts.Covers.Select(cover => (-cover.Taken).ClampToZero()));
        toPlace += freed;
        var rest = new Rest(toPlace.ClampToZero());
        Money floors = rest.Take(Sum(pots.Rows.Select(Floor)));
        (Obligation[] lacking, Money spare) = Lacking(payday, bills);
        ImmutableArray<Unpayable> openBills = Unpayable.Find(lacking, rest.Amount + spare);
        rest.Take((Sum(lacking.Select(due => due.Amount)) - spare).ClampToZero());
        ImmutableArray<Unpayable> minimums = Unpayable.Find(
            [.. Lacking(debts)], rest.Amount);
        rest.Take(debts.Total + freed);
        return
        [
            .. toPlace.IsNegative ? [new Unpayable(new Obligation("", payday, -toPlace, ObligationKind.EssentialBill) { IsOverdrawn = true }, -toPlace)] : ImmutableArray<Unpayable>.Empty,
            .. openBills,
            .. minimums,
            .. Pots(payday, pots, floors, rest.Amount),
        ];

        Money Sum(IEnumerable<Money> amounts) => Money.Sum(amounts, toPlace.Currency);
    }

    // Each bill's dues less what is held for them, and what is held beyond them for later ones.
    private static (Obligation[] Lacking, Money Spare) Lacking(LocalDate payday, BillsStep bills)
    {
        Dictionary<BillId, Money> held = bills.SetAsides.ToDictionary(line => line.BillId, line => line.HeldBefore.ClampToZero());
        var lacking = new List<Obligation>();
        foreach (SetAsideLine line in bills.SetAsides.Where(line => line.HeldBefore.IsNegative))
        {
            lacking.Add(new Obligation(line.Name, payday, -line.HeldBefore, ObligationKind.EssentialBill) { IsOverdrawn = true });
        }

        foreach (DueRow due in bills.Dues)
        {
            Money paid = Money.Min(held[due.BillId], due.Amount);
            held[due.BillId] -= paid;
            lacking.Add(new Obligation(due.Name, due.Date, due.Amount - paid, due.Essential ? ObligationKind.EssentialBill : ObligationKind.Bill));
        }

        return ([.. lacking], Money.Sum(held.Values, bills.Total.Currency));
    }

    // Each debt's minimums less what waits for them in the account.
    private static IEnumerable<Obligation> Lacking(DebtsStep debts)
    {
        Dictionary<DebtId, Rest> held = debts.Covers.ToDictionary(cover => cover.DebtId, cover => new Rest(cover.Held));
        foreach (DebtRow row in debts.Rows.Where(row => row.Due is not null))
        {
            yield return new Obligation(row.Name, row.Due!.Value, row.Own - held[row.DebtId].Take(row.Own), ObligationKind.Minimum);
        }
    }

    private static IEnumerable<Unpayable> Pots(LocalDate payday, PotsStep pots, Money forFloors, Money forMore)
    {
        var floors = new Rest(forFloors);
        var more = new Rest(forMore);
        foreach (PotRow row in pots.Rows.OrderBy(row => row.Pot.Rank))
        {
            Money got = floors.Take(Floor(row)) + more.Take(row.Fill.ClampToZero() - Floor(row));
            if (got < row.Fill)
            {
                yield return new Unpayable(new Obligation(row.Pot.Name, payday, row.Fill, ObligationKind.Pot), row.Fill - got);
            }
        }
    }

    private static Money Floor(PotRow row) => Money.Min(row.Fill.ClampToZero(), row.Pot.Floor);

    /// <summary>Money that is taken from until none is left.</summary>
    private sealed class Rest(Money amount)
    {
        public Money Amount { get; private set; } = amount;

        public Money Take(Money wanted)
        {
            Money taken = Money.Min(wanted, Amount);
            Amount -= taken;
            return taken;
        }
    }
}
