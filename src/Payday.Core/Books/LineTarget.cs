using Payday.Core.Ledgers;

namespace Payday.Core.Books;

/// <summary>What a line of the bank's becomes, and for what or by whom.</summary>
/// <param name="Use">What it becomes.</param>
/// <param name="End">
/// For <see cref="LineUse.For"/> the pot, set-aside, debt or buffer; for <see cref="LineUse.Income"/> the source, null for income
/// that goes by the line's own name; for <see cref="LineUse.Cash"/> the cash pot or the loose notes; else null.
/// </param>
public sealed record LineTarget(LineUse Use, LedgerEnd? End = null)
{
    /// <summary>
    /// The purpose in the account that gives the money for cash, a debt or a transfer, or gets it from one; null for the usual
    /// one: the buffer, or what is left to place, and for cash of a pot what waits in the account for that pot where it is enough.
    /// </summary>
    public LedgerEnd? Other { get; init; }

    /// <summary>It is left as it is.</summary>
    public static LineTarget Leave { get; } = new(LineUse.Leave);
}
