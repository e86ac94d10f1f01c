using System.Collections.Immutable;
using NodaTime;

namespace Payday.Core.Books;

/// <summary>Statements taken into the book at once (design, rule 15): their lines, what each became, and the reconciliation that came of it.</summary>
/// <param name="Number">1 for the first, then without a gap.</param>
/// <param name="Statements">The statements, by their days; one or more.</param>
/// <param name="Lines">Their lines that were new, or were left before, by their days.</param>
/// <param name="Reconciliation">The number of its reconciliation.</param>
public sealed record TakingOfStatements(long Number, ImmutableArray<TakenStatement> Statements, ImmutableArray<TakenLine> Lines, long Reconciliation)
{
    /// <summary>Whether it was undone as a whole.</summary>
    public bool Undone { get; init; }

    /// <summary>The first day of its statements.</summary>
    public LocalDate From => Statements.Min(statement => statement.From);

    /// <summary>The last day of its statements.</summary>
    public LocalDate To => Statements.Max(statement => statement.To);
}
