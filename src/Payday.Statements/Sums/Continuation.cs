using Payday.Core.Amounts;
using Payday.Statements.Lines;

namespace Payday.Statements.Sums;

/// <summary>Whether the balance known before and the new lines make the new balance: the proof for formats without an opening balance.</summary>
/// <param name="Kind">What the balances say.</param>
/// <param name="Missing">What is missing to the new balance, lines that may be repeats not counted.</param>
public sealed record Continuation(ContinuationKind Kind, Money Missing)
{
    /// <summary>Holds a statement's new lines against two balances.</summary>
    /// <param name="before">The booked balance known before.</param>
    /// <param name="lines">The statement's lines beside what is known.</param>
    /// <param name="closing">The booked balance after them.</param>
    /// <exception cref="InvalidOperationException">The currencies differ.</exception>
    public static Continuation Of(Money before, IEnumerable<LineRepeat> lines, Money closing)
    {
        ArgumentNullException.ThrowIfNull(lines);
        Money zero = Money.Zero(before.Currency);
        Money sure = zero;
        Money unsure = zero;
        bool hasUnsure = false;
        foreach (LineRepeat line in lines)
        {
            sure += line.Kind is RepeatKind.New or RepeatKind.Booked ? line.Line.Amount : zero;
            unsure += line.Kind == RepeatKind.Unsure ? line.Line.Amount : zero;
            hasUnsure |= line.Kind == RepeatKind.Unsure;
        }

        Money missing = closing - before - sure;
        ContinuationKind kind = missing.IsZero ? hasUnsure && unsure.IsZero ? ContinuationKind.Unknown : ContinuationKind.UnsureAreRepeats
            : hasUnsure && missing == unsure ? ContinuationKind.UnsureAreNew
            : ContinuationKind.Breaks;
        return new Continuation(kind, missing);
    }
}
