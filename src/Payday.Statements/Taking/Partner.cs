using Payday.Core.BankLines;
using Payday.Core.DuePayments;
using Payday.Core.Ledgers;
using NodaTime;

namespace Payday.Statements.Taking;

/// <summary>What a line of the bank's may be in the book: a line of the account, a due that is still to be paid, or pay of a payday that isn't closed yet.</summary>
public abstract record Partner
{
    private Partner()
    {
    }

    /// <summary>A line of the account.</summary>
    /// <param name="Line">The line.</param>
    /// <param name="IsAtBank">Whether a reconciliation that came of no statement ticked it already.</param>
    public sealed record Entered(AccountLine Line, bool IsAtBank) : Partner;

    /// <summary>A due that hasn't left the account as far as the book knows.</summary>
    /// <param name="Line">The due.</param>
    public sealed record Due(DueLine Line) : Partner;

    /// <summary>Pay of a source that comes with a payday to be closed.</summary>
    /// <param name="Source">The source.</param>
    /// <param name="Name">What the person calls it.</param>
    /// <param name="Payday">The payday.</param>
    public sealed record Pay(LedgerEnd Source, string Name, LocalDate Payday) : Partner;
}
