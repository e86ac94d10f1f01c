using NodaTime;
using Payday.Core.Amounts;
using Payday.Core.Cash;
using Payday.Core.Ledgers;

namespace Payday.Core.Books;

/// <summary>Money that entered or left the account, or the cash, outside a payday (design, rule 13).</summary>
/// <param name="Number">1 for the first, then without a gap.</param>
/// <param name="Date">The day.</param>
/// <param name="Kind">What it is.</param>
/// <param name="For">The purpose that got or gave it, with its place, or the debt that it belongs to.</param>
/// <param name="Amount">Above zero where it came in, below where it went out.</param>
/// <param name="What">What it was, in a few words; may be empty.</param>
/// <param name="Cheque">The number of the cheque it was paid by; null where it was none.</param>
/// <param name="Notes">The notes, where it is cash and they are known; null else.</param>
/// <param name="FirstMovement">The number of its first movement.</param>
/// <param name="LastMovement">The number of its last movement.</param>
public sealed record AccountEntry(
    long Number,
    LocalDate Date,
    EntryKind Kind,
    LedgerEnd For,
    Money Amount,
    string What,
    long? Cheque,
    Notes? Notes,
    long FirstMovement,
    long LastMovement)
{
    /// <summary>Whether it was undone; its movements then have their reverses.</summary>
    public bool Undone { get; init; }

    /// <summary>Where it is that the loose notes were counted: all of them, as they were found; null else.</summary>
    public Notes? Counted { get; init; }

    /// <summary>What was taken as being in the wallet when it was entered; see <c>WalletFills</c>.</summary>
    public TakenUp TakenUp { get; init; } = TakenUp.Nothing;
}
