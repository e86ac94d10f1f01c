using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;

namespace Payday.Core.StatementTaking;

/// <summary>Statements to be taken, with what each of their lines is to become.</summary>
/// <param name="Statements">The statements, by their days; one or more.</param>
/// <param name="Lines">Their lines that no taking that stands has, or has left, by their days.</param>
public sealed record StatementWish(ImmutableArray<TakenStatement> Statements, ImmutableArray<LineDecision> Lines)
{
    /// <summary>The last of the statements.</summary>
    public TakenStatement Last => Statements.MaxBy(statement => statement.To)!;

    /// <summary>The bank's balance after the last of them; null where nobody says.</summary>
    public Money? Balance => Last.Closing;
}
