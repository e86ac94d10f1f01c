using System.Collections.Immutable;
using Payday.Core.Amounts;
using Payday.Core.Books;
using Payday.Core.StatementTaking;
using Payday.Statements.Lines;
using Payday.Statements.Sums;

namespace Payday.Statements.Taking;

/// <summary>The lines of statements that no taking has yet, or has left, and how many are known.</summary>
/// <param name="Lines">Each with its key, in the statements' order.</param>
/// <param name="Known">How many lines are taken already.</param>
/// <param name="BeforeStart">How many are of days before the household's first: its opening balance has them.</param>
internal sealed record NewLines(ImmutableArray<NewLine> Lines, int Known, int BeforeStart)
{
    /// <summary>The new lines of statements that are in order.</summary>
    public static NewLines Of(Book book, IReadOnlyList<Statement> statements)
    {
        ImmutableArray<TakenLine> taken = TakenLines.Of(book);
        var known = taken.Select(LineOf).ToList();
        List<bool> left = [.. taken.Select(line => line.IsLeft)];
        Money? closing = TakenLines.Statements(book) is [.., var before] ? before.Closing : null;
        NodaTime.LocalDate? end = TakenLines.Statements(book) is [.., var latest] ? latest.To : null;
        var lines = ImmutableArray.CreateBuilder<NewLine>();
        int repeated = 0;
        int early = 0;
        foreach (Statement statement in statements)
        {
            ImmutableArray<LineRepeat> verdicts = Repeats.Of(statement.Lines, known, []);
            LineKey[] keys = LineKey.Of(statement.Lines);
            bool unsureAreNew = IsNew(verdicts, closing, end, statement);
            for (int i = 0; i < verdicts.Length; i++)
            {
                LineRepeat verdict = verdicts[i];
                int at = verdict.Known is { } one ? known.FindIndex(other => ReferenceEquals(other, one)) : -1;
                bool isUnsure = verdict.Kind == RepeatKind.Unsure;
                bool wasLeft = at >= 0 && at < left.Count && left[at] && !isUnsure;
                if (verdict.Line.Date < book.Household.Start)
                {
                    early++;
                }
                else if (wasLeft || verdict.Kind is RepeatKind.New or RepeatKind.Booked || (isUnsure && (unsureAreNew || !IsSettled(verdicts, closing, end, statement))))
                {
                    lines.Add(new NewLine(keys[i].ToString(), wasLeft ? verdict.Known! with { Kind = verdict.Line.Kind } : verdict.Line, wasLeft, isUnsure && !unsureAreNew));
                }
                else
                {
                    repeated++;
                }
            }

            known.AddRange(verdicts.Where(verdict => verdict.Kind is RepeatKind.New or RepeatKind.Booked || (verdict.Kind == RepeatKind.Unsure && unsureAreNew)).Select(verdict => verdict.Line));
            closing = statement.Closing?.Amount ?? closing;
            end = statement.To;
        }

        return new NewLines(lines.ToImmutable(), repeated, early);
    }

    // Only the balances can say: those of the statement before, these lines, and this one's.
    private static bool IsNew(ImmutableArray<LineRepeat> verdicts, Money? before, NodaTime.LocalDate? end, Statement statement) =>
        Kind(verdicts, before, end, statement) == ContinuationKind.UnsureAreNew;

    private static bool IsSettled(ImmutableArray<LineRepeat> verdicts, Money? before, NodaTime.LocalDate? end, Statement statement) =>
        Kind(verdicts, before, end, statement) is ContinuationKind.UnsureAreRepeats or ContinuationKind.UnsureAreNew;

    private static ContinuationKind Kind(ImmutableArray<LineRepeat> verdicts, Money? before, NodaTime.LocalDate? end, Statement statement) =>
        before is { } balance && statement.Closing is { } closing && balance.Currency == closing.Amount.Currency && end <= statement.To
            ? Continuation.Of(balance, verdicts, closing.Amount).Kind
            : ContinuationKind.Unknown;

    private static StatementLine LineOf(TakenLine line) => new(line.Date, line.Amount)
    {
        Party = line.Party,
        Text = line.Text,
        BankId = line.BankId,
        Mandate = line.Mandate,
    };
}
