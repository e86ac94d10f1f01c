using Payday.Core.Ids;

namespace Payday.Core.Ledgers;

/// <summary>What movements can be about: a source, bill, debt or pot of the household. One of the nested cases.</summary>
public abstract record LedgerSubject
{
    private LedgerSubject()
    {
    }

    /// <summary>An income source.</summary>
    public sealed record OfSource(SourceId Id) : LedgerSubject;

    /// <summary>A bill.</summary>
    public sealed record OfBill(BillId Id) : LedgerSubject;

    /// <summary>A debt.</summary>
    public sealed record OfDebt(DebtId Id) : LedgerSubject;

    /// <summary>A pot.</summary>
    public sealed record OfPot(PotId Id) : LedgerSubject;

    /// <summary>Whether a movement takes from it, gives to it, or is paid or spent for it.</summary>
    public bool IsIn(Movement movement)
    {
        ArgumentNullException.ThrowIfNull(movement);
        return IsAt(movement.From) || IsAt(movement.To);
    }

    private bool IsAt(LedgerEnd end) => (this, end) switch
    {
        (OfPot pot, LedgerEnd.At held) => held.Purpose.PotId == pot.Id,
        (OfPot pot, LedgerEnd.Outside outside) => outside.PotId == pot.Id,
        (OfBill bill, LedgerEnd.At held) => held.Purpose.BillId == bill.Id,
        (OfBill bill, LedgerEnd.Outside outside) => outside.BillId == bill.Id,
        (OfDebt debt, LedgerEnd.At held) => held.Purpose.DebtId == debt.Id,
        (OfDebt debt, LedgerEnd.Owed owed) => owed.DebtId == debt.Id,
        (OfDebt debt, LedgerEnd.Outside outside) => outside.DebtId == debt.Id,
        (OfSource source, LedgerEnd.Outside outside) => outside.SourceId == source.Id,
        _ => false,
    };
}
