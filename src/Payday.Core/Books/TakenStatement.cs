using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Books;

/// <summary>A statement of the bank's that was taken: what is known of it beside its lines.</summary>
/// <param name="Account">The account's number as the file wrote it; empty where it didn't say.</param>
/// <param name="From">Its first day.</param>
/// <param name="To">Its last day.</param>
public sealed record TakenStatement(string Account, LocalDate From, LocalDate To)
{
    /// <summary>The bank's balance before it; null where the file had none.</summary>
    public Money? Opening { get; init; }

    /// <summary>The bank's balance after it, from the file or from the person; null where neither had one.</summary>
    public Money? Closing { get; init; }

    /// <summary>The number in the bank's sequence; null where there was none.</summary>
    public long? Sequence { get; init; }
}
