using System.Collections.Immutable;
using NodaTime;
using Payday.Core.Amounts;

namespace Payday.Core.Books;

/// <summary>A booked line of a statement, as it came and with what became of it.</summary>
/// <param name="Date">The bank's booking date.</param>
/// <param name="Amount">Above zero what came in, below what went out.</param>
/// <param name="Party">The other side's name as the bank writes it; may be empty.</param>
/// <param name="Text">What it is for, as the bank writes it; may be empty.</param>
public sealed record TakenLine(LocalDate Date, Money Amount, string Party, string Text)
{
    /// <summary>The bank's own reference; may be empty. Banks change and reuse it.</summary>
    public string BankId { get; init; } = "";

    /// <summary>The mandate, else the other side's account; may be empty.</summary>
    public string Mandate { get; init; } = "";

    /// <summary>The account lines that it is, by the numbers of their first movements, rising; none where it was left.</summary>
    public ImmutableArray<long> Lines { get; init; } = [];

    /// <summary>What was written down for it; null where the book had it, or it was left.</summary>
    public WrittenRecord? Wrote { get; init; }

    /// <summary>Whether an earlier taking had it and left it.</summary>
    public bool WasLeft { get; init; }

    /// <summary>Whether it was left: the book has nothing for it.</summary>
    public bool IsLeft => Lines.IsEmpty && Wrote is null;
}
