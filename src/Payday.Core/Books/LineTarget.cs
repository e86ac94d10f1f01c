using Payday.Core.Ledgers;

namespace Payday.Core.Books;

/// <summary>What a line of the bank's becomes, and for what or by whom.</summary>
/// <param name="Use">What it becomes.</param>
/// <param name="End">
/// For <see cref="LineUse.For"/> the pot, set-aside, debt or buffer; for <see cref="LineUse.Income"/> the source, null for income
/// that goes by the line's own name; else null.
/// </param>
public sealed record LineTarget(LineUse Use, LedgerEnd? End = null)
{
    /// <summary>It is left as it is.</summary>
    public static LineTarget Leave { get; } = new(LineUse.Leave);
}
